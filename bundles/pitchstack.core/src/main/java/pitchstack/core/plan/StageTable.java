// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** One stage by its indices: their range, and what the teeth engaged at each are fit for. */
final class StageTable {
    private static final byte CLEAN = (byte) Wear.CLEAN.ordinal();
    private static final byte WORN = (byte) Wear.WORN.ordinal();
    private static final byte BARRED = (byte) Wear.BARRED.ordinal();

    /** Where the stage stands in the axis, counted from the lowest, 0. */
    final int stage;
    private final long pitch;
    private final IndexErrors errors;
    /** The smallest index. */
    final int first;
    /** The largest index, at least {@link #first}. */
    final int last;
    final EffortCost cost;
    private final long largestError;
    private final long lowest;
    private final long highest;
    private final byte[] wear;
    private final IndexRange meeting;

    /** A sound stage; see {@link Soundness}. */
    StageTable(int stage, StageSpec spec) {
        this.stage = stage;
        this.pitch = spec.pitch();
        this.errors = spec.errors();
        IndexRange range = spec.rows().indices();
        this.first = range.first();
        this.last = range.last();
        this.largestError = errors.largest();
        this.lowest = offset(first);
        this.highest = offset(last);
        this.wear = wear(spec.rows(), range);
        this.meeting = spec.rows().meeting();
        this.cost = spec.cost();
    }

    int count() {
        return last - first + 1;
    }

    /** The ordinal of the {@link Wear} at an index of the range. */
    int wear(int index) {
        return wear[index - first];
    }

    /** 1 at an index over worn teeth, else 0. */
    int worn(int index) {
        return wear[index - first] == WORN ? 1 : 0;
    }

    /** The offset of the smallest index. */
    long lowest() {
        return lowest;
    }

    /** The offset of the largest index. */
    long highest() {
        return highest;
    }

    /** How far an index moves the body from where it stands at index 0 without an error, at an index where the rows meet. */
    long offset(int index) {
        return index * pitch + errors.at(index);
    }

    /**
     * The smallest index of the range with at least an offset, or one more than the largest if there is none. Offsets grow
     * with the index, since errors stay below half a pitch; and so the index sought is next to the one that the pitch
     * alone would give.
     */
    int firstAtLeast(long offset) {
        if (offset <= lowest || offset > highest) {
            return offset <= lowest ? first : last + 1;
        }
        int index = Math.max(first, (int) Math.floorDiv(offset, pitch));
        while (offset(index) < offset) {
            index++;
        }
        return index;
    }

    /** The largest index of the range with at most an offset, or one less than the smallest if there is none. */
    int lastAtMost(long offset) {
        if (offset < lowest || offset >= highest) {
            return offset < lowest ? first - 1 : last;
        }
        int index = Math.min(last, (int) Math.floorDiv(offset, pitch) + 1);
        while (offset(index) > offset) {
            index--;
        }
        return index;
    }

    /** The largest error of an index by amount. */
    long largestError() {
        return largestError;
    }

    /** The greatest number that divides the difference of any two offsets; 0 where there is one index. */
    long step() {
        long step = last > first ? offset(first + 1) - lowest : 0;
        for (int n = first + 2; n <= last && step > 1 && largestError > 0; n++) {
            step = OffsetSort.gcd(step, offset(n) - lowest);
        }
        return step;
    }

    /** The pitch, by which offsets grow but for the errors of single indices. */
    long pitch() {
        return pitch;
    }

    /** Whether the stage may stand at an index, over worn teeth or not. */
    boolean isUsable(int index) {
        return first <= index && index <= last && wear(index) != BARRED;
    }

    /** Whether the rows meet at an index, be it by one tooth. */
    boolean meets(int index) {
        return meeting.contains(index);
    }

    /**
     * The wear by index, in time proportional to indices plus marks: each mark adds one edge at either end of the
     * indices it covers, and one pass counts how many marks of each kind are open.
     */
    private static byte[] wear(RowPair rows, IndexRange range) {
        int[] worn = new int[range.count() + 1];
        int[] barred = new int[range.count() + 1];
        for (WornRange mark : rows.base().worn()) {
            ToothSpan on = mark.teeth().intersect(rows.base().span());
            if (!on.isEmpty()) {
                addEdges(mark.wear() == Wear.WORN ? worn : barred, mark, range,
                        on.first() - rows.start() - (rows.rider().teeth() - 1), on.last() - rows.start());
            }
        }
        for (WornRange mark : rows.rider().worn()) {
            ToothSpan on = mark.teeth().intersect(rows.rider().span());
            if (!on.isEmpty()) {
                addEdges(mark.wear() == Wear.WORN ? worn : barred, mark, range,
                        -rows.start() - on.last(), rows.base().teeth() - 1 - rows.start() - on.first());
            }
        }
        return levels(worn, barred);
    }

    private static void addEdges(int[] edges, WornRange mark, IndexRange range, int from, int to) {
        int low = Math.max(from, range.first());
        int high = Math.min(to, range.last());
        if (mark.wear() != Wear.CLEAN && low <= high) {
            edges[low - range.first()]++;
            edges[high - range.first() + 1]--;
        }
    }

    private static byte[] levels(int[] worn, int[] barred) {
        byte[] level = new byte[worn.length - 1];
        int openWorn = 0;
        int openBarred = 0;
        for (int i = 0; i < level.length; i++) {
            openWorn += worn[i];
            openBarred += barred[i];
            level[i] = openBarred > 0 ? BARRED : openWorn > 0 ? WORN : CLEAN;
        }
        return level;
    }
}
