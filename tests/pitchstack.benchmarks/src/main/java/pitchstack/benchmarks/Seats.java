// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import pitchstack.core.accuracy.Watch;
import pitchstack.core.accuracy.teeth.SeatSimulation;
import pitchstack.core.accuracy.teeth.Seating;
import pitchstack.core.accuracy.teeth.SimulatedSeats;
import pitchstack.core.accuracy.teeth.TwoFlankLaw;

/** A simulation of 100 000 rows by chance, each seated between its flanks at a preload at which half of them bear. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class Seats {
    private static final int DRAWS = 100_000;
    private static final double STIFFNESS_N_PER_M = 1e6;
    private static final double SCATTER_M = 30e-6;
    private static final double FLANK_ANGLE_RAD = Math.toRadians(20);

    /** Engaged teeth, of two flanks each. */
    @Param({"20", "100"})
    public int problem;

    /** The simulation. */
    @Benchmark
    public SimulatedSeats simulation() {
        double preload = new TwoFlankLaw(problem, STIFFNESS_N_PER_M, SCATTER_M, FLANK_ANGLE_RAD).preloadN(0.5);
        Seating row = new Seating(problem, STIFFNESS_N_PER_M, SCATTER_M, FLANK_ANGLE_RAD, preload, 0);
        return SeatSimulation.run(row, DRAWS, 1, Watch.NONE).orElseThrow();
    }

    /** What it cannot beat: drawing the errors. */
    @Benchmark
    public double floor() {
        SplittableRandom random = new SplittableRandom(1);
        double sum = 0;
        for (int i = 0; i < DRAWS * 2 * problem; i++) {
            sum += random.nextGaussian();
        }
        return sum;
    }

    /** What answers the same question without chance, for many teeth. */
    @Benchmark
    public double law() {
        TwoFlankLaw law = new TwoFlankLaw(problem, STIFFNESS_N_PER_M, SCATTER_M, FLANK_ANGLE_RAD);
        return law.at(law.preloadN(0.5), 0.3).spreadM();
    }
}
