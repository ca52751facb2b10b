// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.TableQuery;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;

/**
 * How what a target costs grows with the ways to set the fine stages, with the rack and with the number of targets. Each
 * point is the fastest of several runs after some to warm up: other work on the machine only ever makes a run slower.
 */
final class Growth {
    private static final long MICROMETRE = 1_000_000_000L;
    private static final long MARGIN = 20_000 * MICROMETRE;
    private static final int TARGETS = 1024;
    private static final int TABLE_TARGETS = 20_000;
    private static final long TIME_A_POINT = 600_000_000L;
    private static final int LEAST_RUNS = 30;
    private static final int WARM_UPS = 3;
    private static final int[] POSITIONS = {3, 4, 6, 8, 11, 16, 22, 28, 34, 40, 48, 56};
    private static final int[] TEETH = {100, 200, 500, 1000, 2000, 5000, 10_000, 20_000, 50_000, 100_000};
    private static final int[] COUNTS = {1, 3, 10, 30, 100, 300, 1000, 3000, 10_000, 30_000, 100_000};
    /** So that what was worked out is not left out by the compiler. */
    private long sum;

    private Growth() { }

    /** Measures, prints every point, and writes the plots as PNG into a folder that exists. */
    static void draw(Path folder) throws IOException {
        Growth growth = new Growth();
        // The first points would be those of a cold machine.
        for (int i = 0; i < WARM_UPS; i++) {
            growth.points(new Plot("warming up", "rack teeth"), Problem.A.axis(), 0);
            growth.points(new Plot("warming up", "rack teeth"), Problem.C.pairs().withPositions(POSITIONS[i]).axis("C",
                    Problem.TRAVEL, List.of()), 0);
        }
        growth.overFineSettings().write(folder.resolve("cost-fine.png"));
        growth.overRack().write(folder.resolve("cost-rack.png"));
        growth.overTargets().write(folder.resolve("cost-targets.png"));
        if (growth.sum == 1) {
            System.out.println();
        }
    }

    private Plot overFineSettings() {
        Plot plot = new Plot("Problem C with shorter and longer printed stages", "ways to set the fine stages");
        for (int positions : POSITIONS) {
            AxisSpec axis = Problem.C.pairs().withPositions(positions).axis("C", Problem.TRAVEL, List.of());
            points(plot, axis, fineSettings(axis));
        }
        return plot;
    }

    private Plot overRack() {
        Plot plot = new Plot("Problem A with shorter and longer racks", "rack teeth");
        for (int teeth : TEETH) {
            Pairs pairs = Problem.A.pairs().withRack(teeth);
            points(plot, pairs.axis("A", pairs.rackTravel(), List.of()), teeth);
        }
        return plot;
    }

    private void points(Plot plot, AxisSpec axis, double work) {
        Planner planner = Planner.of(axis);
        long[] targets = new Questions(axis).targets(TARGETS, MICROMETRE, MARGIN);
        Setting[] settings = new Questions(axis).settings(TARGETS);
        plot.add("one target, from any setting", work, fastest(() -> {
            for (int i = 0; i < TARGETS; i++) {
                Answer answer = planner.plan(
                        new PlanRequest(targets[i], Problem.TOLERANCE, settings[i], WornPolicy.AVOID, 0));
                sum += answer instanceof Answer.Reached reached ? reached.best().effortMs() : 0;
            }
        }) / TARGETS);
        long[] many = new Questions(axis).targets(TABLE_TARGETS, MICROMETRE, MARGIN);
        TableQuery table = planner.table(settings[0], Directions.unknown(settings[0].size()), WornPolicy.AVOID);
        plot.add("a table, each target, prepared", work, fastest(() -> {
            for (long target : many) {
                sum += table.effortMs(target, Problem.TOLERANCE).orElse(0);
            }
        }) / TABLE_TARGETS);
        plot.add("preparing a table", work, fastest(() -> {
            OptionalLong effort = planner.table(settings[0], Directions.unknown(settings[0].size()), WornPolicy.AVOID)
                    .effortMs(targets[0], Problem.TOLERANCE);
            sum += effort.orElse(0);
        }));
        plot.add("preparing a planner", work, fastest(() -> sum += Planner.of(axis).axis().datum()));
    }

    private Plot overTargets() {
        Plot plot = new Plot("A table of targets, preparing it included", "targets");
        for (Problem problem : Problem.values()) {
            AxisSpec axis = problem.axis();
            Planner planner = Planner.of(axis);
            Setting from = new Questions(axis).settings(1)[0];
            long[] targets = new Questions(axis).targets(COUNTS[COUNTS.length - 1], MICROMETRE, MARGIN);
            for (int count : COUNTS) {
                plot.add("problem " + problem + ", the whole table", count, fastest(() -> {
                    TableQuery table = planner.table(from, Directions.unknown(from.size()), WornPolicy.AVOID);
                    for (int i = 0; i < count; i++) {
                        sum += table.effortMs(targets[i], Problem.TOLERANCE).orElse(0);
                    }
                }));
            }
        }
        return plot;
    }

    /** The ways to set each pair, multiplied. */
    private static double fineSettings(AxisSpec axis) {
        double ways = 1;
        for (int j = 1; j < axis.stages().size(); j += 2) {
            StageSpec lower = axis.stages().get(j);
            StageSpec upper = axis.stages().get(j + 1);
            IndexRange lowers = lower.rows().indices();
            IndexRange uppers = upper.rows().indices();
            int pairs = 0;
            for (int a = lowers.first(); a <= lowers.last(); a++) {
                for (int b = uppers.first(); b <= uppers.last(); b++) {
                    pairs += Math.abs(lower.offset(a) + upper.offset(b)) <= axis.shiftLimits().get(j / 2).limit() ? 1 : 0;
                }
            }
            ways *= pairs;
        }
        return ways;
    }

    /** The fastest of the runs after the first that a fixed time has room for, in microseconds. */
    private static double fastest(Runnable work) {
        // The first may have to fill what is kept between questions, which is no part of what one costs afterwards.
        work.run();
        List<Long> times = new ArrayList<>();
        long end = System.nanoTime() + TIME_A_POINT;
        do {
            long start = System.nanoTime();
            work.run();
            times.add(System.nanoTime() - start);
        } while (System.nanoTime() < end || times.size() < LEAST_RUNS);
        long fastest = times.stream().skip(times.size() / 3).mapToLong(Long::longValue).min().orElseThrow();
        return fastest / 1000.0;
    }
}
