// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Arrays;
import java.util.stream.IntStream;
import java.util.stream.LongStream;

/**
 * The offsets in the orders in which laps are painted, made when first asked for. Most laps are full after few of many
 * offsets, so the cheapest are put in order first and all of them only where that did not do. For one thread.
 */
final class Rankings {
    /** As many are put in order first. */
    private static final int FEW = 4096;
    /** So many efforts are looked at to tell which are among the few. */
    private static final int SAMPLES = 512;

    private final Laps laps;
    private final long tolerance;
    private final long largestError;
    private final long perTooth;
    private final long step;
    private final long[] relative;
    /** For up and down, the cheapest and all. */
    private final RankedOffsets[] ranked = new RankedOffsets[4];

    /**
     * @param places the places, or those that hold them among others
     * @param tolerance itself included
     * @param perTooth what a tooth of the coarse stage costs
     * @param step the step of the grid
     */
    Rankings(Places places, long tolerance, long perTooth, long step) {
        this.laps = places.laps;
        this.tolerance = tolerance;
        this.largestError = places.largestError();
        this.perTooth = perTooth;
        this.step = step;
        this.relative = IntStream.range(0, laps.groups()).mapToLong(laps::lap)
                .flatMap(lap -> LongStream.rangeClosed(lap - 1, lap + 1)).sorted().distinct().toArray();
    }

    /** How far an offset can reach from its lap. */
    long reach() {
        return tolerance + largestError;
    }

    /** The lowest residue at which anything begins that an offset reaches. */
    long lowest() {
        return -tolerance - reach();
    }

    /** The laps of offsets, ascending, and those beside them: each stands for an index of the coarse stage. */
    long[] relative() {
        return relative;
    }

    /** The order for laps that are reached upwards or downwards from home; the cheapest offsets only, or all. */
    RankedOffsets order(boolean up, boolean all) {
        int which = (up ? 0 : 1) + (all ? 2 : 0);
        if (ranked[which] == null) {
            long perLap = up ? -perTooth : perTooth;
            ranked[which] = rank(perLap, 0, laps.groups(), all ? Long.MAX_VALUE : cheap(perLap), Long.MIN_VALUE);
        }
        return ranked[which];
    }

    /** The order of the offsets of one lap alone. */
    RankedOffsets ofLap(long only) {
        return rank(0, laps.firstFrom(only - 1), laps.firstFrom(only + 2), Long.MAX_VALUE, only);
    }

    /** An effort that about {@link #FEW} offsets do not exceed. */
    private long cheap(long perLap) {
        int size = laps.firstEntry(laps.groups());
        if (size <= 2 * FEW) {
            return Long.MAX_VALUE;
        }
        long[] sample = new long[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            int entry = (int) ((long) size * i / SAMPLES);
            sample[i] = laps.figure(entry) + perLap * laps.lapOf(entry);
        }
        Arrays.sort(sample);
        return sample[(int) ((long) FEW * SAMPLES / size)];
    }

    private RankedOffsets rank(long perLap, int from, int to, long most, long only) {
        RankedOffsets.Found found = new RankedOffsets.Found();
        for (int group = from; group < to; group++) {
            for (int aside = -1; aside <= 1; aside++) {
                long lap = laps.lap(group) + aside;
                if (only == Long.MIN_VALUE || lap == only) {
                    add(found, group, aside * laps.pitch(), lap, perLap, most);
                }
            }
        }
        return new RankedOffsets(found, lowest() + tolerance, 2 * tolerance + 1, step, most == Long.MAX_VALUE);
    }

    /** Adds those offsets of a group that can reach into a lap that starts some way from their own. */
    private void add(RankedOffsets.Found found, int group, long shift, long lap, long perLap, long most) {
        int slot = Arrays.binarySearch(relative, lap);
        int end = laps.entryFrom(group, shift + laps.pitch() + reach());
        for (int entry = laps.entryFrom(group, shift - reach()); entry < end; entry++) {
            long effort = laps.figure(entry) + perLap * lap;
            if (effort <= most) {
                found.add(slot, laps.residue(group, entry) - shift, effort);
            }
        }
    }
}
