// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.Random;
import java.util.stream.Stream;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Wear;

/**
 * What is asked of an axis with stops: by chance, but the same on every run.
 *
 * @param axis the axis
 */
record Questions(AxisSpec axis) {
    private static final long SEED = 2_540;

    /**
     * Targets spread evenly over the travel, in an order by chance.
     *
     * @param step counts of which targets are whole multiples
     * @param margin how far they stay off the stops
     */
    long[] targets(int count, long step, long margin) {
        long low = Math.floorDiv(axis.low().orElseThrow() + margin, step);
        long high = Math.floorDiv(axis.high().orElseThrow() - margin, step);
        return new Random(SEED).longs(count, low, high).map(n -> n * step).toArray();
    }

    /** Settings over usable teeth that rows, stops and limits allow. */
    Setting[] settings(int count) {
        Random random = new Random(SEED + 1);
        return Stream.generate(() -> any(random, true)).filter(this::isWithinStops).limit(count).toArray(Setting[]::new);
    }

    /** Settings that break every limit, so that it has to hold at the end of a move only. */
    Setting[] tippedSettings(int count) {
        Random random = new Random(SEED + 2);
        return Stream.generate(() -> any(random, false)).limit(count).toArray(Setting[]::new);
    }

    /** A setting that keeps every limit, or none; the limits must concern different stages. */
    private Setting any(Random random, boolean keep) {
        Setting setting = Setting.zero(axis.stages().size());
        for (int j = 0; j < setting.size(); j++) {
            setting = setting.with(j, index(random, j));
        }
        for (ShiftLimit limit : axis.shiftLimits()) {
            while (keeps(setting, limit) != keep) {
                for (int j = limit.lowest(); j <= limit.highest(); j++) {
                    setting = setting.with(j, index(random, j));
                }
            }
        }
        return setting;
    }

    private int index(Random random, int j) {
        RowPair rows = axis.stages().get(j).rows();
        IndexRange range = rows.indices();
        int index = range.first() + random.nextInt(range.count());
        return rows.wearAt(index) == Wear.BARRED ? index(random, j) : index;
    }

    private boolean isWithinStops(Setting setting) {
        long position = axis.position(setting);
        return axis.low().orElseThrow() <= position && position <= axis.high().orElseThrow();
    }

    private boolean keeps(Setting setting, ShiftLimit limit) {
        long shift = 0;
        for (int j = limit.lowest(); j <= limit.highest(); j++) {
            shift += axis.stages().get(j).offset(setting.index(j));
        }
        return Math.abs(shift) <= limit.limit();
    }
}
