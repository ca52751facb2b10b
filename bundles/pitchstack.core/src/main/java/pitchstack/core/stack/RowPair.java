// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * Two mating rows. At index n the rider's first tooth stands over base tooth {@code start + n}, so the rider covers
 * base teeth {@code [start + n, start + n + riders − 1]}; where it hangs over an end of the base row, fewer are
 * engaged.
 *
 * @param base the row below
 * @param rider the row on the underside of the moved body
 * @param start the base tooth under the rider's first tooth at index 0
 * @param minimumEngaged how many teeth must stay engaged
 */
public record RowPair(RowSpec base, RowSpec rider, int start, int minimumEngaged) {
    /** The base teeth that are engaged at an index; empty where the rows do not meet. */
    public ToothSpan engagedBase(int index) {
        return rider.span().shift(start + index).intersect(base.span());
    }

    /** The rider teeth that are engaged at an index; empty where the rows do not meet. */
    public ToothSpan engagedRider(int index) {
        return engagedBase(index).shift(-(start + index));
    }

    /**
     * The indices at which enough teeth are engaged; empty if there is none. A minimum below 1 counts as 1.
     */
    public IndexRange indices() {
        int least = Math.max(1, minimumEngaged);
        if (least > Math.min(base.teeth(), rider.teeth())) {
            return IndexRange.EMPTY;
        }
        return new IndexRange(least - rider.teeth() - start, base.teeth() - least - start);
    }

    /** The indices at which the rows meet at all, be it by one tooth; empty if either has no tooth. */
    public IndexRange meeting() {
        return base.teeth() < 1 || rider.teeth() < 1 ? IndexRange.EMPTY
                : new IndexRange(1 - rider.teeth() - start, base.teeth() - 1 - start);
    }

    /** What the teeth engaged at an index are fit for: the worst mark on either row. */
    public Wear wearAt(int index) {
        return base.wearOn(engagedBase(index)).worse(rider.wearOn(engagedRider(index)));
    }
}
