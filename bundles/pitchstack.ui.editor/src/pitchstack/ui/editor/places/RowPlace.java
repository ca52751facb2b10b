// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import pitchstack.core.stack.ToothSpan;

/**
 * Where a row stands. Each tooth has a cell one pitch wide, with the tooth in one half and the gap for the mating
 * tooth in the other; base teeth take the left half and rider teeth the right half.
 *
 * @param left the place of the left end of the first cell
 * @param pitch the width of a cell, counts, at least 0
 * @param teeth how many cells there are, at least 0
 */
public record RowPlace(double left, double pitch, int teeth) {
    /** The left end of a cell, inside the row or not. */
    public double edge(int tooth) {
        return left + tooth * pitch;
    }

    /** The whole row. */
    public Extent extent() {
        return new Extent(left, edge(teeth));
    }

    /** The cells of some teeth; empty for an empty span. */
    public Extent extent(ToothSpan some) {
        return new Extent(edge(some.first()), edge(Math.max(some.first(), some.last() + 1)));
    }

    /** All teeth. */
    public ToothSpan span() {
        return new ToothSpan(0, teeth - 1);
    }

    /**
     * The tooth whose cell holds a place, or the nearest tooth of the row.
     *
     * @return from 0 to {@code teeth − 1}; 0 where the row has no teeth
     */
    public int toothAt(double place) {
        return pitch <= 0 ? 0 : (int) Math.max(0, Math.min(teeth - 1, Math.floor((place - left) / pitch)));
    }

    /** The teeth whose cells meet a stretch. */
    public ToothSpan teethIn(Extent stretch) {
        if (pitch <= 0 || teeth <= 0 || stretch.to() < left || stretch.from() > edge(teeth)) {
            return new ToothSpan(0, -1);
        }
        return new ToothSpan(toothAt(stretch.from()), toothAt(stretch.to()));
    }
}
