// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * Neighbouring teeth of one row, both ends included; empty where {@code last < first}.
 *
 * @param first the first tooth, counted from 0
 * @param last the last tooth
 */
public record ToothSpan(int first, int last) {
    /** The number of teeth, 0 for an empty span. */
    public int count() {
        return isEmpty() ? 0 : last - first + 1;
    }

    /** Whether there is no tooth in the span. */
    public boolean isEmpty() {
        return last < first;
    }

    /** The teeth in both spans. */
    public ToothSpan intersect(ToothSpan other) {
        return new ToothSpan(Math.max(first, other.first), Math.min(last, other.last));
    }

    /** Whether the spans share a tooth. */
    public boolean meets(ToothSpan other) {
        return !intersect(other).isEmpty();
    }

    /** Whether every tooth of the other span is in this one. An empty span is in every other. */
    public boolean contains(ToothSpan other) {
        return other.isEmpty() || (first <= other.first && other.last <= last);
    }

    /** The same teeth counted from another origin. */
    public ToothSpan shift(int teeth) {
        return new ToothSpan(first + teeth, last + teeth);
    }
}
