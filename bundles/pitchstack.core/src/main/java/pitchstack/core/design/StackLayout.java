// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;

/**
 * Rows for a rack and the printed stages on it.
 *
 * @param pitches counts a tooth, the rack first
 * @param rows the rows of each stage
 */
public record StackLayout(List<Long> pitches, List<RowPair> rows) {
    /** Teeth that always stay engaged: 12 leave 1/√12, about 29 %, of one tooth's scatter. */
    public static final int ENGAGED = 12;

    /** Copies the lists. */
    public StackLayout {
        pitches = List.copyOf(pitches);
        rows = List.copyOf(rows);
    }

    /**
     * Rows along a line or an arc. A printed stage with N indices gets rows of E + (N − 1)/2 teeth, so that both are as
     * short as they can be; the rack is longer than the travel by what the printed stages may stand off on either side.
     *
     * @param travel counts from the lowest to the highest position, at least 0; the lowest is where every index is 0
     * @param rack the rack's pitch
     * @param fine the printed stages, the lowest first
     * @throws ArithmeticException if the rack would have more teeth than an {@code int} counts
     */
    public static StackLayout open(long travel, long rack, List<FineStage> fine) {
        List<Long> pitches = new ArrayList<>(List.of(rack));
        List<RowPair> rows = new ArrayList<>();
        long below = 0;
        long above = 0;
        int widest = ENGAGED;
        for (FineStage stage : fine) {
            RowPair pair = pair(stage.indices());
            pitches.add(stage.pitch());
            rows.add(pair);
            below = Math.addExact(below, -pair.indices().first() * stage.pitch());
            above = Math.addExact(above, pair.indices().last() * stage.pitch());
            widest = Math.max(widest, pair.base().teeth());
        }
        int first = -Math.toIntExact(teeth(above, rack));
        int last = Math.toIntExact(teeth(Math.addExact(travel, below), rack));
        int rider = Math.min(widest, ENGAGED - first);
        int base = Math.addExact(last - first, 2 * ENGAGED - rider);
        rows.add(0, rows(base, rider, ENGAGED - rider - first, ENGAGED));
        return new StackLayout(pitches, rows);
    }

    /**
     * A closed rack ring that mates with an equal one, and rows on it.
     *
     * @param turn counts in one turn
     * @param rack the ring's pitch
     * @param fine the printed stages, the lowest first; one whose pitch divides the turn is a closed ring too
     */
    public static StackLayout closed(long turn, long rack, List<FineStage> fine) {
        List<Long> pitches = new ArrayList<>(List.of(rack));
        List<RowPair> rows = new ArrayList<>(List.of(ring(turn, rack)));
        for (FineStage stage : fine) {
            pitches.add(stage.pitch());
            rows.add(isRing(turn, stage.pitch()) ? ring(turn, stage.pitch()) : pair(stage.indices()));
        }
        return new StackLayout(pitches, rows);
    }

    /** Whether a pitch, rounded down to a whole count, divides a turn into whole teeth. */
    public static boolean isRing(long turn, long pitch) {
        return turn % pitch < turn / pitch;
    }

    /** A ring has no ends; the rows have, so half the teeth are called engaged, which allows half a turn either way. */
    private static RowPair ring(long turn, long pitch) {
        int teeth = Math.toIntExact(turn / pitch);
        return rows(teeth, teeth, 0, (teeth + 1) / 2);
    }

    private static RowPair pair(int indices) {
        int more = indices - 1;
        return rows(ENGAGED + more - more / 2, ENGAGED + more / 2, 0, ENGAGED);
    }

    private static RowPair rows(int base, int rider, int start, int engaged) {
        return new RowPair(new RowSpec(base, List.of()), new RowSpec(rider, List.of()), start, engaged);
    }

    private static long teeth(long length, long pitch) {
        return -Math.floorDiv(-length, pitch);
    }
}
