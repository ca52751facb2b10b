// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.SortedMap;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Soundness;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.RotaryScale;

final class ChecksNeverThrowTest {
    private static final int SUBJECTS = 4_000;
    private static final long[] LONGS = {0, 1, -1, 2, 7, Stacks.MM, -Stacks.MM, Soundness.FARTHEST,
        Soundness.FARTHEST + 1, Long.MAX_VALUE, Long.MAX_VALUE - 1, Long.MIN_VALUE, Long.MIN_VALUE + 1};
    private static final int[] INTS = {0, 1, -1, 2, 3, 5, 12, 40, -7, Soundness.MOST_TEETH + 1, Integer.MAX_VALUE,
        Integer.MAX_VALUE - 1, Integer.MIN_VALUE, Integer.MIN_VALUE + 1};
    private static final double[] LINES = {0.0004, 0, -1, Double.NaN, Double.POSITIVE_INFINITY, Double.MIN_VALUE};

    @Test
    void returnsFindingsWhateverTheNumbersAre() {
        long seed = System.nanoTime();
        int sound = 0;
        for (int i = 0; i < SUBJECTS; i++) {
            Subject subject = nonsense(new Random(seed + i));
            String what = "seed " + (seed + i) + "\n" + subject;
            List<Finding> found = assertDoesNotThrow(() -> Checks.run(subject), what);
            boolean plannable = Soundness.problem(subject.axis()).isEmpty();
            if (plannable) {
                sound++;
                assertDoesNotThrow(() -> Planner.of(subject.axis()), what);
            } else {
                assertThrows(IllegalArgumentException.class, () -> Planner.of(subject.axis()), what);
                assertFalse(found.stream().noneMatch(f -> f.severity() == Severity.ERROR),
                        "what cannot be planned with must be found: " + what);
            }
        }
        assertFalse(sound < SUBJECTS / 100, "only " + sound + " sound axes");
    }

    @Test
    void runsEveryCheckOnce() {
        assertEquals(Checks.all().size(), Checks.all().stream().map(Object::getClass).distinct().count());
    }

    private static Subject nonsense(Random random) {
        List<StageSpec> stages = new ArrayList<>();
        int count = random.nextInt(random.nextInt(10) == 0 ? 11 : 4);
        boolean mild = random.nextBoolean();
        for (int j = 0; j < count; j++) {
            long pitch = number(random, mild);
            stages.add(new StageSpec("s" + j, Source.values()[random.nextInt(2)],
                    random.nextBoolean() ? pitch : number(random, mild), pitch,
                    new RowPair(row(random, mild), row(random, mild), teeth(random, mild), teeth(random, mild)),
                    new EffortCost(number(random, mild), number(random, mild), number(random, mild)),
                    errors(random, mild, pitch)));
        }
        List<ShiftLimit> limits = new ArrayList<>();
        while (random.nextInt(4) == 0) {
            limits.add(new ShiftLimit(teeth(random, mild), teeth(random, mild), number(random, mild)));
        }
        AxisSpec axis = new AxisSpec("a", random.nextInt(3) == 0 ? new RotaryScale(RotaryScale.ARC_SECONDS * 1000)
                : Stacks.LINEAR, stages, number(random, mild), stop(random, mild), stop(random, mild), limits,
                Approach.values()[random.nextInt(3)],
                number(random, mild), stop(random, mild));
        int[] current = new int[random.nextInt(5) == 0 ? random.nextInt(5) : count];
        for (int j = 0; j < current.length; j++) {
            current[j] = teeth(random, mild);
        }
        List<Stop> targets = new ArrayList<>();
        while (random.nextBoolean()) {
            targets.add(new Stop("", number(random, mild), Math.max(0, number(random, mild))));
        }
        return new Subject(axis, Setting.of(current), LINES[random.nextInt(LINES.length)], forms(random), targets);
    }

    private static Map<Integer, ToothForm> forms(Random random) {
        Map<Integer, ToothForm> forms = new TreeMap<>();
        while (random.nextInt(3) > 0) {
            forms.put(random.nextInt(5) - 1, new ToothForm(size(random), size(random), size(random), size(random),
                    size(random), size(random), size(random), size(random)));
        }
        return forms;
    }

    private static double size(Random random) {
        return random.nextBoolean() ? 5 * random.nextDouble() : LINES[random.nextInt(LINES.length)];
    }

    private static IndexErrors errors(Random random, boolean mild, long pitch) {
        SortedMap<Integer, Long> errors = new TreeMap<>();
        while (random.nextInt(3) == 0) {
            errors.put(random.nextInt(40) - 20, mild && random.nextInt(50) > 0 ? pitch / 3 : number(random, false));
        }
        return IndexErrors.of(errors);
    }

    private static RowSpec row(Random random, boolean mild) {
        List<WornRange> marks = new ArrayList<>();
        while (random.nextInt(3) == 0) {
            marks.add(new WornRange(new ToothSpan(teeth(random, false), teeth(random, false)),
                    Wear.values()[random.nextInt(3)]));
        }
        return new RowSpec(teeth(random, mild), marks);
    }

    private static OptionalLong stop(Random random, boolean mild) {
        return random.nextBoolean() ? OptionalLong.empty() : OptionalLong.of(number(random, mild));
    }

    /** Mild numbers are mostly sound, so that the checks behind the guards are put to the test as well. */
    private static long number(Random random, boolean mild) {
        return mild && random.nextInt(50) > 0 ? 1 + random.nextInt(1_000_000) : random.nextInt(4) == 0
                ? random.nextLong() : LONGS[random.nextInt(LONGS.length)];
    }

    private static int teeth(Random random, boolean mild) {
        return mild && random.nextInt(50) > 0 ? 1 + random.nextInt(8) : INTS[random.nextInt(INTS.length)];
    }
}
