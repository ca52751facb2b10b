// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.WearMark.Row;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/**
 * One stage of pitch 1000: a rider of two teeth, both engaged, on six, so indices 0 to 4 at 0, 1000 … 4000. A move
 * costs 4 s and 1 s a tooth. Base tooth 3 is engaged at indices 2 and 3.
 */
class WhatIfTest {
    private static final Setting HOME = Setting.of(0);

    private static AxisSpec axis(long wantedStep) {
        StageSpec stage = new StageSpec("Rack", Source.BOUGHT, 1000, 1000,
                new RowPair(new RowSpec(6, List.of()), new RowSpec(2, List.of()), 0, 2), new EffortCost(4000, 1000));
        return new AxisSpec("axis", KnownStacks.MM, List.of(stage), 0, OptionalLong.empty(), OptionalLong.empty(), List.of(),
                0, OptionalLong.of(wantedStep));
    }

    private static WearMark mark(int first, int last, Wear wear) {
        return new WearMark(0, Row.BASE, new WornRange(new ToothSpan(first, last), wear));
    }

    private static Supposition answer(List<WearMark> marks, long tolerance, Stop... stops) {
        return new WhatIf(axis(1000), marks, tolerance, HOME, Directions.unknown(1), List.of(stops)).answer(Progress.NONE).get();
    }

    @Test
    void tellsWhatBarredTeethWouldCost() {
        Supposition found = answer(List.of(mark(3, 3, Wear.BARRED)), 0, new Stop("at 2000", 2000, 0),
                new Stop("about 3600", 3600, 700), new Stop("at 1000", 1000, 0), new Stop("never", 2500, 100));
        assertEquals(5, found.now().summary().clean());
        assertEquals(3, found.supposed().summary().clean());
        assertEquals(List.of(new Changed(2000, 2000, Reached.CLEAN, Reached.NOT),
                new Changed(3000, 3000, Reached.CLEAN, Reached.NOT)), found.change().lost());
        assertEquals(List.of(), found.change().wornOnly());
        assertTrue(found.stops().get(0).fails());
        assertEquals(OptionalLong.of(1000), found.stops().get(1).extraMs(), "index 4 instead of 3");
        assertFalse(found.stops().get(2).isChanged());
        assertFalse(found.stops().get(3).fails(), "it is not reached now either");
        assertEquals(1000, found.extraMs());
    }

    /** A clean setting farther off is taken before a worn one that is nearer. */
    @Test
    void tellsWhatWornTeethWouldCost() {
        Supposition found = answer(List.of(mark(3, 3, Wear.WORN)), 0, new Stop("at 2000", 2000, 0),
                new Stop("about 3600", 3600, 700));
        assertEquals(List.of(), found.change().lost());
        assertEquals(2, CoverageChange.size(found.change().wornOnly()));
        assertTrue(found.stops().get(0).turnsWorn());
        assertEquals(OptionalLong.of(0), found.stops().get(0).extraMs());
        assertEquals(OptionalLong.of(1000), found.stops().get(1).extraMs());
    }

    /**
     * Within 1000, from 0: now 0, 0, 5, 6 and 7 s at the five positions; with indices 2 and 3 barred 0, 0, 5, 8 and 8.
     */
    @Test
    void comparesTheMeanEffortOverTheTravel() {
        MeanEffort mean = answer(List.of(mark(3, 3, Wear.BARRED)), 1000).mean().orElseThrow();
        assertEquals(5, mean.cells());
        assertEquals(18_000 / 5.0, mean.nowMs());
        assertEquals(21_000 / 5.0, mean.supposedMs());
    }

    @Test
    void losesAllWhereEveryToothIsBarred() {
        Supposition found = answer(List.of(mark(0, 5, Wear.BARRED)), 0, new Stop("at 2000", 2000, 0));
        assertEquals(5, CoverageChange.size(found.change().lost()));
        assertTrue(found.stops().get(0).fails());
        assertTrue(found.mean().isEmpty(), "nothing is reached both times");
    }

    @Test
    void takesOffAMarkThatWasPutOn() {
        WearMark mark = mark(3, 4, Wear.BARRED);
        assertEquals(axis(1000), mark.off(mark.on(axis(1000))));
        assertEquals(axis(1000), mark.off(axis(1000)), "there is none");
    }

    @Test
    void endsWhereItIsCancelled() {
        AtomicInteger asked = new AtomicInteger();
        Progress impatient = new Progress() {
            @Override
            public boolean isCancelled() {
                return asked.incrementAndGet() > 0;
            }

            @Override
            public void done(long part, long of) {
                assertTrue(part >= 0 && part <= of, part + " of " + of);
            }
        };
        WhatIf question = new WhatIf(axis(1000), List.of(), 0, HOME, Directions.unknown(1), List.of(new Stop("", 0, 0)));
        assertInstanceOf(Outcome.Cancelled.class, question.answer(impatient));
        assertTrue(asked.get() > 0);
    }
}
