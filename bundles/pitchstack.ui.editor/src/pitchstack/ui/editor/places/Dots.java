// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.Arrays;
import java.util.OptionalLong;

/**
 * Positions that can be reached, as they are marked on the ruler.
 *
 * @param from the position that the offsets count from, a count of the scale
 * @param offsets the positions as offsets, lowest first; on a rotary axis they go on beyond a turn
 * @param apart the least distance of two marks, counts; positions nearer than that to a marked one may be left out
 * @param thinned whether any is left out
 * @param ended whether the search was ended before all that is seen was looked at
 */
public record Dots(long from, long[] offsets, long apart, boolean thinned, boolean ended) {
    /** No position. */
    public static final Dots NONE = new Dots(0, new long[0], 0, false, false);

    /** The marked position that is nearest to an offset, as an offset. */
    public OptionalLong nearest(double offset) {
        return Arrays.stream(offsets).boxed().min((a, b) -> Double.compare(Math.abs(a - offset), Math.abs(b - offset)))
                .stream().mapToLong(Long::longValue).findFirst();
    }
}
