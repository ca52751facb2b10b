// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.Arrays;
import pitchstack.core.stack.Wear;

/**
 * What a search walks over: some stages one by one, the one of most indices outermost, and a sorted list of the
 * combinations of all others. Holds only settings over teeth no worse than one kind, and is never changed.
 */
final class SearchSpace {
    /** The stages searched one by one. */
    final StageTable[] outer;
    final Combinations list;
    /** The worst teeth allowed. */
    final Wear worst;
    final long datum;
    /** From which gain on a {@link KeySearch} is made. */
    final double leastGain;
    /** The components whose limits on the way are looked at only once the whole setting is known. */
    final int[] lateComponents;
    /** Whether the effort of a setting is that of the one outer stage plus one known number for each block. */
    final boolean separable;
    /** What the limits say with the index of each outer stage and, last, with an entry of the list. */
    private final ShiftRule.Check[][] checks;
    /** The smallest offset of everything after each outer stage. */
    private final long[] restLow;
    private final long lowest;
    /** The largest. */
    private final long[] restHigh;

    /** The greatest number by which places can differ that have one beginning; the first for all places. */
    private final long[] step;

    /** A space; the list must have an entry for {@link #first} and {@link #last} to be asked. */
    SearchSpace(StageTable[] outer, Combinations list, Wear worst, long datum, ShiftRule.Check[][] checks,
            int[] lateComponents, double leastGain) {
        this.leastGain = leastGain;
        this.lateComponents = lateComponents;
        this.outer = outer;
        this.list = list;
        this.worst = worst;
        this.datum = datum;
        this.checks = checks;
        this.separable = outer.length == 1 && lateComponents.length == 0 && checks[1].length == 0
                && Arrays.stream(list.blocks).allMatch(Block::isTabled);
        this.restLow = new long[outer.length];
        this.restHigh = new long[outer.length];
        this.step = new long[outer.length + 1];
        step[outer.length] = list.step;
        long low = list.size() == 0 ? 0 : list.lowest();
        long high = list.size() == 0 ? 0 : list.highest();
        for (int level = outer.length - 1; level >= 0; level--) {
            restLow[level] = low;
            restHigh[level] = high;
            step[level] = OffsetSort.gcd(step[level + 1], outer[level].step());
            low += outer[level].lowest();
            high += outer[level].highest();
        }
        this.lowest = datum + low;
    }

    boolean isEmpty() {
        return list.size() == 0;
    }

    /**
     * Whether some place that the pitches allow lies between two others; where pitches have a common measure, that spares
     * walking through many settings none of which can meet a narrow window. Only asked where stages are walked in one
     * another: with one stage and a list to look up it is not worth it.
     *
     * @param level the first outer stage that has no index yet
     * @param base datum and offsets of the stages before
     */
    boolean canMeet(int level, long base, long low, long high) {
        if (outer.length == 1 || step[level] == 1) {
            return true;
        }
        long start = level == 0 ? lowest : base + restLow[level - 1];
        return step[level] == 0 ? low <= start && start <= high
                : Math.floorDiv(high - start, step[level]) * step[level] >= low - start;
    }

    /** The smallest index of an outer stage from which what follows can still come up to a place. */
    int first(int level, long base, long low) {
        return outer[level].firstAtLeast(low - base - restHigh[level]);
    }

    /** The largest index of an outer stage from which what follows can still come down to a place. */
    int last(int level, long base, long high) {
        return outer[level].lastAtMost(high - base - restLow[level]);
    }

    /** The index of an outer stage about which the settings nearest to a place lie. */
    int middle(int level, long base, long place) {
        long half = restLow[level] + (restHigh[level] - restLow[level]) / 2;
        StageTable table = outer[level];
        return Math.max(table.first, table.lastAtMost(place - base - half));
    }

    /** Whether an index of an outer stage may be used, as far as can be told from it and the stages before. */
    boolean allows(int level, int[] indices) {
        StageTable table = outer[level];
        return table.wear(indices[table.stage]) <= worst.ordinal() && keepsLimits(level, indices);
    }

    /** How many stages the axis has. */
    int stages() {
        return outer.length + Arrays.stream(list.blocks).mapToInt(block -> block.stages.length).sum();
    }

    /** Whether the limits allow the indices down to a level; the level after the last outer stage is the list. */
    boolean keepsLimits(int level, int[] indices) {
        for (ShiftRule.Check check : checks[level]) {
            if (!check.allows(indices)) {
                return false;
            }
        }
        return true;
    }
}
