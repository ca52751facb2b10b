// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;
import static pitchstack.core.Stacks.with;
import static pitchstack.core.Stacks.withStage;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.LongUnaryOperator;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;

/** What must follow when an axis and a request are changed together, without knowing the right answer. */
final class MetamorphicTest {
    private static final int STACKS = 1500;
    /** Scaled and shifted numbers of the random stacks stay far within a long. */
    private static final long MODERATE = 1L << 50;

    /** A stack and a request by chance. */
    private interface Property {
        void check(AxisSpec axis, PlanRequest request, Random random, String what);
    }

    private static void forAll(Property property) {
        long seed = System.nanoTime();
        for (int i = 0; i < STACKS; i++) {
            RandomStacks stacks = new RandomStacks(seed + i);
            AxisSpec axis = stacks.axis();
            PlanRequest asked = stacks.request(axis);
            PlanRequest request = new PlanRequest(asked.target() % MODERATE, asked.tolerance() % MODERATE, asked.from(),
                    asked.worn(), Math.min(asked.alternatives(), 5));
            property.check(axis, request, new Random(seed + i),
                    "seed " + (seed + i) + "\n" + axis + "\n" + request);
        }
    }

    @Test
    void shiftingDatumStopsAndTargetTogetherShiftsThePositions() {
        forAll((axis, request, random, what) -> {
            long shift = random.nextInt(2_000_001) - 1_000_000L;
            LongUnaryOperator move = x -> x + shift;
            boolean rotary = axis.scale().turn() > 0;
            // A missing stop of a rotary axis stands at 0, which would not move along.
            if (rotary && axis.low().isPresent() != axis.high().isPresent()) {
                return;
            }
            AxisSpec moved = new AxisSpec(axis.name(), axis.scale(), axis.stages(), move.applyAsLong(axis.datum()),
                    map(axis.low(), move), map(axis.high(), move), axis.shiftLimits(), 0, OptionalLong.empty());
            PlanRequest there = new PlanRequest(request.target() + shift, request.tolerance(), request.from(),
                    request.worn(), request.alternatives());
            Answer expected = map(plan(axis, request), p -> new PlannedSetting(p.setting(),
                    axis.scale().wrap(p.position() + shift), p.error(), p.effortMs(), p.wornStages()));
            assertEquals(expected, plan(moved, there), what);
        });
    }

    @Test
    void scalingAllLengthsScalesPositionsAndErrors() {
        forAll((axis, request, random, what) -> {
            if (axis.scale().turn() > 0) {
                return;
            }
            long factor = 2 + random.nextInt(50);
            LongUnaryOperator scale = x -> x * factor;
            List<StageSpec> stages = axis.stages().stream().map(s -> new StageSpec(s.name(), s.source(),
                    s.nominalPitch() * factor, s.pitch() * factor, s.rows(), s.cost())).toList();
            List<ShiftLimit> limits = axis.shiftLimits().stream()
                    .map(l -> new ShiftLimit(l.lowest(), l.highest(), l.limit() * factor)).toList();
            AxisSpec scaled = new AxisSpec(axis.name(), axis.scale(), stages, axis.datum() * factor,
                    map(axis.low(), scale), map(axis.high(), scale), limits, 0, OptionalLong.empty());
            PlanRequest there = new PlanRequest(request.target() * factor, request.tolerance() * factor,
                    request.from(), request.worn(), request.alternatives());
            Answer expected = map(plan(axis, request), p -> new PlannedSetting(p.setting(), p.position() * factor,
                    p.error() * factor, p.effortMs(), p.wornStages()));
            assertEquals(expected, plan(scaled, there), what);
        });
    }

    @Test
    void aLargerToleranceNeverCostsMore() {
        forAll((axis, request, random, what) -> {
            Answer before = plan(axis, request);
            PlanRequest looser = new PlanRequest(request.target(), request.tolerance() + random.nextInt(2000),
                    request.from(), request.worn(), 0);
            if (before instanceof Answer.Reached reached) {
                PlannedSetting best = Plans.reached(plan(axis, looser)).best();
                // Avoiding worn teeth comes before effort: a clean setting may newly lie within tolerance and cost more.
                assertTrue(cost(best, request.worn()) <= cost(reached.best(), request.worn()), what);
            }
        });
    }

    @Test
    void markingTeethNeverLowersAnEffort() {
        forAll((axis, request, random, what) -> {
            Answer before = plan(axis, request);
            AxisSpec marked = marked(axis, random);
            if (plan(marked, request) instanceof Answer.Reached after) {
                PlannedSetting best = Plans.reached(before).best();
                assertTrue(cost(after.best(), request.worn()) >= cost(best, request.worn()), what + "\n" + marked);
            }
        });
    }

    /** What is made least: the effort, after the choice of clean teeth where worn ones are to be avoided. */
    private static long cost(PlannedSetting planned, WornPolicy policy) {
        boolean avoided = policy == WornPolicy.AVOID && !planned.wornStages().isEmpty();
        return planned.effortMs() + (avoided ? 1L << 60 : 0);
    }

    @Test
    void reversingTheAxisMirrorsTheAnswer() {
        forAll((axis, request, random, what) -> {
            if (axis.scale().turn() > 0) {
                return;
            }
            LongUnaryOperator negate = x -> -x;
            AxisSpec mirrored = new AxisSpec(axis.name(), axis.scale(),
                    axis.stages().stream().map(MetamorphicTest::mirrored).toList(), -axis.datum(),
                    map(axis.high(), negate), map(axis.low(), negate), axis.shiftLimits(), 0, OptionalLong.empty());
            int[] from = request.from().toArray();
            for (int j = 0; j < from.length; j++) {
                from[j] = Math.max(from[j], -Integer.MAX_VALUE);
            }
            PlanRequest here = new PlanRequest(request.target(), request.tolerance(), Setting.of(from),
                    request.worn(), 0);
            PlanRequest there = new PlanRequest(-request.target(), request.tolerance(), negated(Setting.of(from)),
                    request.worn(), 0);
            assertMirrored(plan(axis, here), plan(mirrored, there), what);
        });
    }

    /** Settings may differ where only the last ties, below before above and smaller indices first, decide. */
    private static void assertMirrored(Answer here, Answer there, String what) {
        if (here instanceof Answer.Reached reached) {
            PlannedSetting a = reached.best();
            PlannedSetting b = Plans.reached(there).best();
            assertEquals(List.of(a.effortMs(), Math.abs(a.error()), (long) a.wornStages().size()),
                    List.of(b.effortMs(), Math.abs(b.error()), (long) b.wornStages().size()), what);
        } else {
            Answer.Nearest a = Plans.nearest(here);
            Answer.Nearest b = Plans.nearest(there);
            assertEquals(a.reason(), b.reason(), what);
            assertMirrored(a.below(), b.above(), what);
            assertMirrored(a.above(), b.below(), what);
        }
    }

    private static void assertMirrored(Optional<PlannedSetting> a, Optional<PlannedSetting> b, String what) {
        assertEquals(a.map(p -> List.of(p.position(), p.error(), p.effortMs(), (long) p.wornStages().size())),
                b.map(p -> List.of(-p.position(), -p.error(), p.effortMs(), (long) p.wornStages().size())), what);
    }

    @Test
    void inchAndMillimetreSpellingsGiveOneAnswerToTheFemtometre() {
        AxisSpec inches = fence(new LinearScale(LengthUnit.INCH), "1/4 in CP", "0.24");
        AxisSpec millimetres = fence(new LinearScale(LengthUnit.MM), "6.35 mm", "6.096");
        Planner inInches = Planner.of(inches);
        Planner inMillimetres = Planner.of(millimetres);
        for (int sixtyFourth = 0; sixtyFourth < 96 * 64; sixtyFourth += 37) {
            String target = sixtyFourth / 64 + " " + sixtyFourth % 64 + "/64";
            // 25.4/64 mm = 0.396875 mm exactly.
            String same = BigDecimal.valueOf(396_875L * sixtyFourth, 6).toPlainString();
            PlanRequest asked = Plans.request(inches, inches.scale().parse(target), inches.scale().parse("0.005"), 3);
            PlanRequest equal = Plans.request(millimetres, millimetres.scale().parse(same),
                    millimetres.scale().parse("0.127"), 3);
            assertEquals(inInches.plan(asked), inMillimetres.plan(equal), target);
        }
    }

    private static AxisSpec fence(LinearScale scale, String rack, String printed) {
        return axis(scale, stage("rack", Pitch.parse(rack).units(scale), 0, 400),
                stage("carriage", Pitch.parse(printed).units(scale), -25, 25));
    }

    private static Answer plan(AxisSpec axis, PlanRequest request) {
        return Planner.of(axis).plan(request);
    }

    private static Answer map(Answer answer, UnaryOperator<PlannedSetting> change) {
        if (answer instanceof Answer.Reached reached) {
            return new Answer.Reached(change.apply(reached.best()),
                    reached.alternatives().stream().map(change).toList());
        }
        Answer.Nearest nearest = (Answer.Nearest) answer;
        return new Answer.Nearest(nearest.below().map(change), nearest.above().map(change), nearest.reason());
    }

    private static OptionalLong map(OptionalLong value, LongUnaryOperator change) {
        return value.isPresent() ? OptionalLong.of(change.applyAsLong(value.getAsLong())) : value;
    }

    private static Setting negated(Setting setting) {
        int[] indices = setting.toArray();
        for (int j = 0; j < indices.length; j++) {
            indices[j] = -indices[j];
        }
        return Setting.of(indices);
    }

    /** Both rows turned end for end, so that index n becomes −n. */
    private static StageSpec mirrored(StageSpec s) {
        RowPair rows = s.rows();
        int start = rows.base().teeth() - rows.rider().teeth() - rows.start();
        return new StageSpec(s.name(), s.source(), s.nominalPitch(), s.pitch(),
                new RowPair(mirrored(rows.base()), mirrored(rows.rider()), start, rows.minimumEngaged()), s.cost());
    }

    private static RowSpec mirrored(RowSpec row) {
        int end = row.teeth() - 1;
        return new RowSpec(row.teeth(), row.worn().stream().map(mark -> new WornRange(
                new ToothSpan(end - mark.teeth().last(), end - mark.teeth().first()), mark.wear())).toList());
    }

    private static AxisSpec marked(AxisSpec axis, Random random) {
        int j = random.nextInt(axis.stages().size());
        StageSpec s = axis.stages().get(j);
        int first = random.nextInt(s.rows().base().teeth());
        List<WornRange> marks = new ArrayList<>(s.rows().base().worn());
        marks.add(new WornRange(new ToothSpan(first, first + random.nextInt(3)),
                random.nextBoolean() ? Wear.WORN : Wear.BARRED));
        RowPair rows = new RowPair(new RowSpec(s.rows().base().teeth(), marks), s.rows().rider(), s.rows().start(),
                s.rows().minimumEngaged());
        return withStage(axis, j, with(s, rows));
    }
}
