// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.WearMark.Row;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.core.plan.Step;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/** A rack of pitch 1000 with a rider of two teeth on eight, both engaged: indices 0 to 6 over base teeth n and n + 1. */
class VisitsTest {
    private static final Setting HOME = Setting.of(0);

    private static AxisSpec axis(WornRange... marks) {
        StageSpec rack = new StageSpec("Rack", Source.BOUGHT, 1000, 1000,
                new RowPair(new RowSpec(8, List.of(marks)), new RowSpec(2, List.of()), 0, 2), new EffortCost(0, 1000));
        return KnownStacks.axis(List.of(rack), OptionalLong.empty(), OptionalLong.empty(), List.of());
    }

    private static List<Setting> visits(AxisSpec axis, Setting from, StopOrder order, long... targets) {
        List<Stop> stops = Arrays.stream(targets).mapToObj(target -> new Stop("", target, 0)).toList();
        SequenceAnswer answer = Sequences.plan(Planner.of(axis), new SequenceRequest(stops, from, WornPolicy.AVOID, order),
                Progress.NONE);
        return Visits.of((SequenceAnswer.Planned) answer, order, from);
    }

    @Test
    void goOneByOnePastWhatIsLeftOut() {
        assertEquals(List.of(Setting.of(3), Setting.of(5)), visits(axis(), HOME, StopOrder.ONE_BY_ONE, 3000, 99_000, 5000));
    }

    @Test
    void goBackAfterEachStopThatIsPlannedFromTheStart() {
        assertEquals(List.of(Setting.of(3), HOME, Setting.of(5), HOME),
                visits(axis(), HOME, StopOrder.EACH_FROM_START, 3000, 99_000, 5000));
    }

    /** From 0 by way of 2 and 4 to 6, whatever order they are given in. */
    @Test
    void goInTheOrderOfThePlan() {
        assertEquals(List.of(Setting.of(2), Setting.of(4), Setting.of(6)),
                visits(axis(), HOME, StopOrder.FREE, 4000, 6000, 2000));
    }

    /** A list of legs as a planner could give it: stage 0 goes to 2 by way of 1, and stage 1 one further and back. */
    @Test
    void countWhereAStageIsSetDownOnTheWay() {
        PlannedSetting move = new PlannedSetting(Setting.of(2, -2), 0, 0, 0, List.of(), List.of(
                new Step(0, 0, 1, Step.Kind.PARTWAY), new Step(1, 0, -3, Step.Kind.FURTHER),
                new Step(1, -3, -2, Step.Kind.RETURN), new Step(0, 1, 2)));
        SequenceAnswer.Planned planned = new SequenceAnswer.Planned(
                List.of(new Leg(0, Optional.of(move), Optional.empty())), 0, Optional.empty(), OptionalLong.empty());
        assertEquals(List.of(Setting.of(1, 0), Setting.of(2, -2)),
                Visits.of(planned, StopOrder.ONE_BY_ONE, Setting.of(0, 0)));
    }

    /**
     * One run to 2 and 3 seats base teeth 2 3 and 3 4: 0 0 1 2 1 0 0 0, twice at most 4. With the start tooth raised by
     * two the second run seats 4 5 and 5 6: together 0 0 1 2 2 2 1 0, so 2.
     */
    @Test
    void shiftingTheRackSpreadsTheSeatings() {
        List<Setting> run = List.of(Setting.of(2), Setting.of(3));
        assertArrayEquals(new int[] {0, 0, 1, 2, 1, 0, 0, 0}, Seatings.ofMoves(axis(), HOME, run).of(0, Row.BASE));
        RackShift shift = RackShift.of(axis(), 0, 2, HOME, run);
        assertEquals(new RackShift(0, 2, 4, 2, 0, 0, 0), shift);
        assertEquals(new RackShift(0, 0, 4, 4, 0, 0, 0), RackShift.of(axis(), 0, 0, HOME, run));
    }

    /** With the start tooth at 4 index 3 hangs over the end; at 3, index 3 stands on teeth 6 and 7 and index 2 on 5 and 6. */
    @Test
    void shiftingTheRackTellsWhichSettingsItSpoils() {
        List<Setting> run = List.of(Setting.of(2), Setting.of(3));
        assertEquals(1, RackShift.of(axis(), 0, 4, HOME, run).beyond());
        RackShift onMarks = RackShift.of(axis(new WornRange(new ToothSpan(5, 5), Wear.WORN),
                new WornRange(new ToothSpan(7, 7), Wear.BARRED)), 0, 3, HOME, run);
        assertEquals(1, onMarks.worn());
        assertEquals(1, onMarks.barred());
    }
}
