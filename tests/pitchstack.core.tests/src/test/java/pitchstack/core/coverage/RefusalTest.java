// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

final class RefusalTest {
    private static final Reach PROBLEM_A = Reach.of(KnownStacks.problemA(), Progress.NONE).get();

    /** Says yes to a cancellation after some looks. */
    private static Progress cancelledAfter(int looks) {
        AtomicInteger left = new AtomicInteger(looks);
        return new Progress() {
            @Override
            public boolean isCancelled() {
                return left.getAndDecrement() <= 0;
            }

            @Override
            public void done(long part, long of) {
                assertTrue(0 <= part && part <= of, () -> part + " of " + of);
            }
        };
    }

    @Test
    void namesWhatToChangeWhereThereAreTooManyOffsets() {
        Outcome.Refused<Reach> refused = assertInstanceOf(Outcome.Refused.class,
                Reach.of(KnownStacks.problemA(), Progress.NONE, 100, 1000));
        assertEquals("The fine stages give more than 100 different offsets, too many to map; shorten a row, or limit"
                + " the net shift of two stages.", refused.why());
        assertInstanceOf(Outcome.Done.class, Reach.of(KnownStacks.problemA(), Progress.NONE, 115, 1000));
    }

    @Test
    void asksForALargerToleranceWhereThereAreTooManyStretches() {
        Reach reach = Reach.of(KnownStacks.problemA(), Progress.NONE, 1000, 106_089).get();
        Outcome.Refused<Coverage> refused = assertInstanceOf(Outcome.Refused.class, reach.coverage(0, Progress.NONE));
        assertEquals("A tolerance of 0.000 mm leaves more than 106089 separate stretches, too many to list; ask for a"
                + " larger tolerance.", refused.why());
        Reach larger = Reach.of(KnownStacks.problemA(), Progress.NONE, 1000, 106_090).get();
        assertInstanceOf(Outcome.Done.class, larger.coverage(0, Progress.NONE));
    }

    @Test
    void namesTheFinestStepThatCanBeMapped() {
        Outcome.Refused<GridCoverage> refused = assertInstanceOf(Outcome.Refused.class,
                PROBLEM_A.grid(0, 1000, 0, Progress.NONE));
        // 2567.46 mm in 2^27 cells.
        assertEquals("A step of less than 0.0001 mm is too fine to map the whole travel; take 0.0001 mm or more.",
                refused.why());
    }

    @Test
    void saysOfATooFineGridAndOfTooManyStretchesWhichIsWhich() {
        Reach reach = Reach.of(KnownStacks.wholeTurn(), Progress.NONE, 1000, 16).get();
        Outcome.Refused<GridCoverage> refused = assertInstanceOf(Outcome.Refused.class,
                reach.grid(0, 1000, 0, Progress.NONE));
        assertTrue(refused.why().startsWith("A tolerance of 0\" leaves more than 16 "), refused.why());
    }

    @Test
    void endsEarlyWhenCancelled() {
        assertInstanceOf(Outcome.Cancelled.class, Reach.of(KnownStacks.problemA(), cancelledAfter(0)));
        assertInstanceOf(Outcome.Cancelled.class, PROBLEM_A.coverage(0, cancelledAfter(0)));
        assertInstanceOf(Outcome.Cancelled.class, PROBLEM_A.grid(0, KnownStacks.mm("0.01"), 0, cancelledAfter(0)));
        assertInstanceOf(Outcome.Cancelled.class, PROBLEM_A.finestStep(Wear.WORN, cancelledAfter(2)));
        assertInstanceOf(Outcome.Done.class, PROBLEM_A.coverage(0, cancelledAfter(1_000_000)));
    }

    @Test
    void refusesMoreSettingsThanCanBeCounted() {
        AxisSpec axis = KnownStacks.axis(Collections.nCopies(8, KnownStacks.stage(1, 0, 1000, 1)), OptionalLong.empty(),
                OptionalLong.empty(), List.of());
        assertInstanceOf(Outcome.Refused.class, Reach.of(axis, Progress.NONE));
    }

    @Test
    void takesNoNegativeToleranceNoStepOfNothingAndNoBarredTeeth() {
        assertThrows(IllegalArgumentException.class, () -> PROBLEM_A.coverage(-1, Progress.NONE));
        assertThrows(IllegalArgumentException.class, () -> PROBLEM_A.ways(0, -1));
        assertThrows(IllegalArgumentException.class, () -> PROBLEM_A.grid(0, 0, 0, Progress.NONE));
        assertThrows(IllegalArgumentException.class, () -> PROBLEM_A.finestStep(Wear.BARRED, Progress.NONE));
    }
}
