// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class LapsTest {
    private static final long SEED = 5_113;

    @Test
    void findsTheRunsOfAnyGroupsBetweenAnyBounds() {
        for (int i = 0; i < 2_000; i++) {
            compare(new Random(SEED + i), "seed " + (SEED + i));
        }
    }

    private static void compare(Random random, String about) {
        long pitch = 50 + random.nextInt(2_000);
        long[] offsets = random.longs(1 + random.nextInt(1_500), -3 * pitch, 4 * pitch).sorted().distinct().toArray();
        Laps laps = new Laps(OffsetSet.ofSorted(Tally.WAYS, offsets, new long[offsets.length]), pitch);
        RunTree tree = new RunTree(laps, random.nextInt(12));
        for (int i = 0; i < 5; i++) {
            int from = random.nextInt(laps.groups());
            int to = from + 1 + random.nextInt(laps.groups() - from);
            long low = random.nextInt((int) pitch);
            long high = low + random.nextInt((int) (pitch - low));
            boolean whole = random.nextBoolean();
            Spans found = whole ? tree.range(from, to) : tree.range(from, to, low, high);
            long[] residues = Arrays.stream(offsets)
                    .filter(y -> laps.lap(from) * pitch <= y && y < (laps.lap(to - 1) + 1) * pitch)
                    .map(y -> Math.floorMod(y, pitch)).filter(r -> whole || low <= r && r <= high).sorted().toArray();
            assertEquals(runs(residues, tree.join()), listed(found), about);
        }
    }

    private static List<List<Long>> runs(long[] residues, long join) {
        List<List<Long>> runs = new ArrayList<>();
        for (int i = 0; i < residues.length; i++) {
            if (i == 0 || residues[i] - residues[i - 1] > join) {
                runs.add(new ArrayList<>(List.of(residues[i], residues[i])));
            }
            runs.get(runs.size() - 1).set(1, residues[i]);
        }
        return runs;
    }

    private static List<List<Long>> listed(Spans spans) {
        List<List<Long>> listed = new ArrayList<>();
        for (int i = 0; i < spans.size(); i++) {
            listed.add(List.of(spans.first(i), spans.last(i)));
        }
        return listed;
    }
}
