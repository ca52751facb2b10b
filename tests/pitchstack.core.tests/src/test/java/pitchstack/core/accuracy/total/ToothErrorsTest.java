// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.accuracy.teeth.EffectiveTeeth;

/** What single teeth make of a way, by hand and against rows drawn by chance. */
class ToothErrorsTest {
    private static final double SIGMA = 30e-6;

    private static StageAccuracy stage(double neighbours, int bases, int start) {
        RowAccuracy row = new RowAccuracy(new RowLength.Scaled(0, ""), SIGMA, neighbours, Accuracies.PLA);
        return Accuracies.stage("s", 5e-3, bases, 20, start, row, row, 0);
    }

    /** n teeth in, n teeth out, of 20: σ·√(2n)/20/√2, until none is shared: σ·√(2/20)/√2. */
    @ParameterizedTest
    @CsvSource({"0,0", "1,1", "3,3", "20,20", "35,20"})
    void growsWithTheRootOfTheWayUntilNoToothIsShared(int index, int exchanged) {
        assertEquals(SIGMA * Math.sqrt(2.0 * exchanged) / 20 / Math.sqrt(2), ToothErrors.spreadM(stage(0, 60, 0), index), 1e-15);
    }

    /** Far apart, the two windows are independent again, each with the effective number of teeth. */
    @Test
    void countsEffectiveTeethWhereNeighboursHangTogether() {
        double expected = SIGMA * Math.sqrt(2 / EffectiveTeeth.fading(20, 0.5)) / Math.sqrt(2);
        assertEquals(expected, ToothErrors.spreadM(stage(0.5, 200, 0), 150), 1e-12);
    }

    /** 20 000 rows, seed 1: at an end 12 of the 20 rider teeth stay engaged, so rider errors count too. */
    @ParameterizedTest
    @CsvSource({"0,1", "0,3", "0,28", "0.6,3", "0.6,28"})
    void agreesWithRowsDrawnByChance(double neighbours, int index) {
        StageAccuracy stage = stage(neighbours, 40, 0);
        Random random = new Random(1);
        int draws = 20_000;
        double squares = 0;
        for (int i = 0; i < draws; i++) {
            double way = 0;
            for (int flank = 0; flank < 2; flank++) {
                double[] base = row(random, 40, neighbours);
                double[] rider = row(random, 20, neighbours);
                way += (mean(base, rider, index) - mean(base, rider, 0)) / 2;
            }
            squares += way * way;
        }
        double drawn = Math.sqrt(squares / draws);
        assertEquals(drawn, ToothErrors.spreadM(stage, index), 4 * drawn / Math.sqrt(2.0 * draws));
    }

    private static double[] row(Random random, int teeth, double neighbours) {
        double[] errors = new double[teeth];
        double error = random.nextGaussian();
        for (int i = 0; i < teeth; i++) {
            errors[i] = SIGMA * error;
            error = neighbours * error + Math.sqrt(1 - neighbours * neighbours) * random.nextGaussian();
        }
        return errors;
    }

    private static double mean(double[] base, double[] rider, int index) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < rider.length && i + index < base.length; i++) {
            sum += base[i + index] - rider[i];
            count++;
        }
        return sum / count;
    }
}
