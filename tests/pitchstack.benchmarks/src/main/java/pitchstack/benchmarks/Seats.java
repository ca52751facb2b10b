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
import org.openjdk.jmh.annotations.Setup;
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
    private static final int COMPARED = 2_000;
    private static final double AGREEMENT = 0.1;
    private static final double STIFFNESS_N_PER_M = 1e6;
    private static final double SCATTER_M = 30e-6;
    private static final double FLANK_ANGLE_RAD = Math.toRadians(20);

    /** Engaged teeth, of two flanks each. */
    @Param({"20", "100"})
    public int problem;

    private Seating row() {
        double preload = new TwoFlankLaw(problem, STIFFNESS_N_PER_M, SCATTER_M, FLANK_ANGLE_RAD).preloadN(0.5);
        return new Seating(problem, STIFFNESS_N_PER_M, SCATTER_M, FLANK_ANGLE_RAD, preload, 0);
    }

    /** The simulation. */
    @Benchmark
    public SimulatedSeats simulation() {
        return SeatSimulation.run(row(), DRAWS, 1, Watch.NONE).orElseThrow();
    }

    /** Refuses to measure a rival that finds another spread: of 2 000 draws each it is known to 1.6 %. */
    @Setup
    public void compare() {
        Seating row = row();
        double ours = SeatSimulation.run(row, COMPARED, 1, Watch.NONE).orElseThrow().spreadM();
        double theirs = new HipparchusSeats(row, 2).spreadM(COMPARED);
        if (Math.abs(ours / theirs - 1) > AGREEMENT) {
            throw new IllegalStateException("The simulation found a spread of " + ours + " m, Hipparchus of " + theirs + " m");
        }
    }

    /** The same by a general-purpose library: its Gaussian generator, and its root finder for the equilibrium of each side. */
    @Benchmark
    public double hipparchus() {
        return new HipparchusSeats(row(), 1).spreadM(DRAWS);
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
