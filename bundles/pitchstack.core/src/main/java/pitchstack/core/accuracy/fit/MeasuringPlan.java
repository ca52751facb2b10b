// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;

/**
 * Which settings to measure so that every stage is told from every other: one stage after the other over its whole range
 * while the others stand at home, up and down again, as often as wanted.
 */
public final class MeasuringPlan {
    /**
     * One reading to take.
     *
     * @param run the how manieth run, from 1
     * @param setting where the stages are to stand
     * @param direction from which side to approach
     */
    public record Line(int run, Setting setting, Direction direction) { }

    private MeasuringPlan() {
    }

    /**
     * A plan.
     *
     * @param home the setting at which the other stages stand, an allowed one
     * @param points settings for each stage, at least 2; fewer where the stage has fewer that are allowed
     * @param runs how often each is visited from each side, at least 1
     */
    public static List<Line> of(AxisSpec axis, Setting home, int points, int runs) {
        if (points < 2 || runs < 1) {
            throw new IllegalArgumentException("A plan needs two points a stage and one run, not " + points + " and " + runs);
        }
        List<Line> lines = new ArrayList<>();
        for (int stage = 0; stage < axis.stages().size(); stage++) {
            List<Setting> way = way(axis, home, stage, points);
            for (int run = 1; run <= runs; run++) {
                add(lines, run, way, Direction.FORWARD);
                List<Setting> back = new ArrayList<>(way);
                Collections.reverse(back);
                add(lines, run, back, Direction.BACK);
            }
        }
        return lines;
    }

    private static void add(List<Line> lines, int run, List<Setting> way, Direction direction) {
        way.forEach(setting -> lines.add(new Line(run, setting, direction)));
    }

    /** Settings of one stage, evenly over its range, ends included, in rising order. */
    private static List<Setting> way(AxisSpec axis, Setting home, int stage, int points) {
        Allowed allowed = new Allowed(axis);
        IndexRange range = axis.stages().get(stage).rows().indices();
        int first = allowed.towards(home, stage, range.first()).index(stage);
        int last = allowed.towards(home, stage, range.last()).index(stage);
        Set<Setting> way = new LinkedHashSet<>();
        for (int i = 0; i < points; i++) {
            long n = first + Math.round(((double) last - first) * i / (points - 1));
            way.add(allowed.towards(home, stage, (int) n));
        }
        return List.copyOf(way);
    }
}
