// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.WornPolicy;
import pitchstack.model.Axis;
import pitchstack.model.Target;

/** The grid plate and the index table, against sums of their own: the numbers are typed here again, from the drawing. */
class GridAndTableExampleTest {
    private static final long MICROMETRE = 1_000_000_000L;

    private static AxisAnalysis axis(String example, int number) throws Exception {
        Example loaded = Example.load(example);
        return AxisAnalysis.of(loaded.positioner(), loaded.positioner().getAxes().get(number));
    }

    private static Answer plan(AxisAnalysis axis, long target, long tolerance) {
        return axis.planner().orElseThrow().plan(new PlanRequest(target, tolerance, axis.current(), WornPolicy.AVOID, 0));
    }

    /** In micrometres: rack, two printed pitches, the index range of the rack, and that of both printed stages. */
    @ParameterizedTest
    @CsvSource({"0, 5000, 4500, 4950, -10, 88, -4, 5, 400000", "1, 4000, 3550, 3950, -8, 83, -4, 4, 300000"})
    void reachEveryTwentiethOfAMillimetreOfBothAxes(int number, long rack, long lower, long upper, int first, int last,
            int low, int high, long travel) throws Exception {
        TreeSet<Long> reached = new TreeSet<>();
        for (int i = first; i <= last; i++) {
            for (int j = low; j <= high; j++) {
                for (int k = low; k <= high; k++) {
                    reached.add(i * rack + j * lower + k * upper);
                }
            }
        }
        AxisAnalysis axis = axis("grid-plate", number);
        for (long position = 0; position <= travel; position += 50) {
            assertTrue(reached.contains(position), position + " µm");
            assertInstanceOf(Answer.Reached.class, plan(axis, position * MICROMETRE, 0), position + " µm");
        }
    }

    @ParameterizedTest
    @CsvSource({"grid-plate, 0", "grid-plate, 1", "index-table, 0"})
    void reachTheirTargets(String example, int number) throws Exception {
        AxisAnalysis analysis = axis(example, number);
        Axis axis = analysis.axis();
        for (Target target : axis.getTargets()) {
            long tolerance = target.getTolerance() == null ? analysis.spec().tolerance()
                    : analysis.spec().scale().parse(target.getTolerance());
            Answer answer = plan(analysis, analysis.spec().scale().parse(target.getPosition()), tolerance);
            Answer.Reached reached = assertInstanceOf(Answer.Reached.class, answer, target.getName());
            assertEquals("Over the burr".equals(target.getName()), !reached.best().wornStages().isEmpty(), target.getName());
        }
    }

    /** −19 · 3600 + 35 · 3660 − 4 · 3601 = 45 296 arc seconds, which is 12°34'56". */
    @Test
    void standWhereTheyAreSaidTo() throws Exception {
        AxisAnalysis table = axis("index-table", 0);
        assertEquals("12°34'56\"", table.spec().scale().format(table.spec().position(table.current())));
        for (int number = 0; number < 2; number++) {
            AxisAnalysis plate = axis("grid-plate", number);
            assertEquals(100_000 * MICROMETRE, plate.spec().position(plate.current()));
        }
    }

    /** 60 j + k with j and k from −36 to 36 gives 4393 neighbouring arc seconds, more than the 3600 of a degree. */
    @Test
    void setEveryArcSecondOfTheTable() throws Exception {
        AxisAnalysis table = axis("index-table", 0);
        long second = table.spec().scale().turn() / 1_296_000;
        for (int arc = 0; arc < 1_296_000; arc += 997) {
            assertInstanceOf(Answer.Reached.class, plan(table, arc * second, 0), arc + " arc seconds");
        }
    }
}
