// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

/**
 * Neighbouring indices of a stage, both ends included; empty where {@code last < first}.
 *
 * @param first the smallest index
 * @param last the largest index
 */
public record IndexRange(int first, int last) {
    /** No index. */
    public static final IndexRange EMPTY = new IndexRange(0, -1);

    /** How many indices there are. */
    public int count() {
        return isEmpty() ? 0 : last - first + 1;
    }

    /** Whether there is none. */
    public boolean isEmpty() {
        return last < first;
    }

    /** Whether an index is in the range. */
    public boolean contains(int index) {
        return first <= index && index <= last;
    }

    /** The nearest index in the range; the range must not be empty. */
    public int clamp(int index) {
        return Math.max(first, Math.min(last, index));
    }
}
