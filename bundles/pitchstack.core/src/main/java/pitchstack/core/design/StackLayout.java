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
            int more = stage.indices() - 1;
            int rider = ENGAGED + more / 2;
            int base = ENGAGED + more - more / 2;
            RowPair pair = rows(base, rider, 0, ENGAGED);
            pitches.add(stage.pitch());
            rows.add(pair);
            below = Math.addExact(below, -pair.indices().first() * stage.pitch());
            above = Math.addExact(above, pair.indices().last() * stage.pitch());
            widest = Math.max(widest, base);
        }
        int first = -Math.toIntExact(teeth(above, rack));
        int last = Math.toIntExact(teeth(Math.addExact(travel, below), rack));
        int rider = Math.min(widest, ENGAGED - first);
        int base = Math.addExact(last - first, 2 * ENGAGED - rider);
        rows.add(0, rows(base, rider, ENGAGED - rider - first, ENGAGED));
        return new StackLayout(pitches, rows);
    }

    /**
     * Closed rings, each mating with an equal one. A ring has no ends; the model's rows have, so half the teeth are called
     * the fewest engaged, which gives the indices of half a turn either way.
     *
     * @param rings teeth in a turn, the lowest first
     * @param pitches counts a tooth of each
     */
    public static StackLayout closed(List<Integer> rings, List<Long> pitches) {
        return new StackLayout(pitches, rings.stream().map(teeth -> rows(teeth, teeth, 0, (teeth + 1) / 2)).toList());
    }

    private static RowPair rows(int base, int rider, int start, int engaged) {
        return new RowPair(new RowSpec(base, List.of()), new RowSpec(rider, List.of()), start, engaged);
    }

    private static long teeth(long length, long pitch) {
        return -Math.floorDiv(-length, pitch);
    }
}
