// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Two public runs of five targets and five cycles, measured in 2021 and published as test reports of ecmc, a motion
 * control system: one of a slits axis, one as {@code examples/mcu1025_fat_sat/report.md} of
 * {@code paulscherrerinstitute/ecmccfg}, commit 2e51e0ea. What the reports print to 10 nm is checked against them; their R
 * and E over both directions are not used, because they take the larger of the one-way figures instead. Those two, and
 * more digits, were worked out apart from this program.
 */
class PublicRunsTest {
    private static final double[] TARGETS_MM = {15.0, 25.2, 35.4, 45.6, 55.8};

    private static final double[][] SLITS_UP = {
        {15.00335, 15.00233, 15.00172, 15.00213, 15.00172}, {25.19974, 25.20015, 25.20096, 25.20056, 25.20056},
        {35.40102, 35.3996, 35.40225, 35.40306, 35.40449}, {45.59151, 45.5909, 45.59212, 45.5909, 45.58947},
        {55.80583, 55.80624, 55.80685, 55.80562, 55.80562}};
    private static final double[][] SLITS_DOWN = {
        {15.00518, 15.00518, 15.00416, 15.00335, 15.00314}, {25.19628, 25.19607, 25.19567, 25.19587, 25.19526},
        {35.39817, 35.39837, 35.3998, 35.39939, 35.4}, {45.59232, 45.59191, 45.59293, 45.59191, 45.59151},
        {55.80705, 55.80725, 55.80705, 55.80705, 55.80644}};

    private static final double[][] AXIS_UP = {
        {15.0033, 15.00452, 15.00085, 15.0033, 15.00595}, {25.19933, 25.19913, 25.19933, 25.20015, 25.20117},
        {35.38477, 35.38762, 35.38395, 35.3864, 35.3866}, {45.59182, 45.58978, 45.59263, 45.59263, 45.5908},
        {55.83882, 55.84025, 55.83964, 55.84086, 55.84005}};
    private static final double[][] AXIS_DOWN = {
        {15.10035, 14.9721, 14.9721, 14.96966, 14.97251}, {25.27803, 25.2132, 25.21259, 25.21748, 25.21422},
        {35.39639, 35.38803, 35.38926, 35.39252, 35.3915}, {45.57387, 45.57041, 45.5649, 45.56939, 45.57061},
        {55.79315, 55.79499, 55.79132, 55.79193, 55.7958}};

    private static Positioning evaluate(double[][] up, double[][] down) {
        List<TargetVisits> visits = new ArrayList<>();
        for (int i = 0; i < TARGETS_MM.length; i++) {
            visits.add(new TargetVisits(TARGETS_MM[i], deviations(up[i], TARGETS_MM[i]), deviations(down[i], TARGETS_MM[i])));
        }
        return Positioning.of(visits);
    }

    /** In micrometres. */
    private static List<Double> deviations(double[] readings, double target) {
        return Arrays.stream(readings).map(reading -> (reading - target) * 1000).boxed().toList();
    }

    private static void assertFigures(double[] expected, double within, double... figures) {
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], figures[i], within);
        }
    }

    private static double[] oneWay(Optional<OneWayFigures> figures) {
        OneWayFigures f = figures.orElseThrow();
        return new double[] {f.repeatabilityM(), f.errorM(), f.accuracyM()};
    }

    private static double[] twoWay(Positioning run) {
        TwoWayFigures f = run.both().orElseThrow();
        return new double[] {f.reversalM(), f.meanReversalM(), f.repeatabilityM(), f.errorM(), f.meanErrorM(), f.accuracyM()};
    }

    @Test
    void evaluatesTheSlitsAxis() {
        Positioning run = evaluate(SLITS_UP, SLITS_DOWN);
        assertFigures(new double[] {7.5024, 15.052, 18.0654}, 6e-4, oneWay(run.up()));
        assertFigures(new double[] {3.8825, 14.852, 16.5425}, 6e-4, oneWay(run.down()));
        assertFigures(new double[] {4.564, 0.6956, 8.3539, 15.988, 14.952, 18.5713}, 6e-4, twoWay(run));
    }

    @Test
    void givesMeansAndSpreadsOfTheSlitsAxis() {
        Positioning run = evaluate(SLITS_UP, SLITS_DOWN);
        assertFigures(new double[] {2.250, 0.394, 2.084, -9.020, 6.032}, 1e-6,
                run.targets().stream().mapToDouble(t -> t.up().orElseThrow().meanM()).toArray());
        assertFigures(new double[] {4.202, -4.170, -0.854, -7.884, 6.968}, 1e-6,
                run.targets().stream().mapToDouble(t -> t.down().orElseThrow().meanM()).toArray());
        assertFigures(new double[] {0.66944, 0.46441, 1.87559, 0.98405, 0.52266}, 6e-6,
                run.targets().stream().mapToDouble(t -> t.up().orElseThrow().deviationM()).toArray());
    }

    @Test
    void evaluatesTheAxisOfTheEcmccfgReport() {
        Positioning run = evaluate(AXIS_UP, AXIS_DOWN);
        assertFigures(new double[] {7.513, 54.056, 58.534}, 6e-4, oneWay(run.up()));
        assertFigures(new double[] {230.373, 57.268, 230.373}, 6e-4, oneWay(run.down()));
        assertFigures(new double[] {46.486, 8.294, 230.373, 70.088, 35.997, 230.373}, 6e-4, twoWay(run));
    }

    /** R↑ .00751, R↓ .23036, E↑ .05405, E↓ .05727, A↑ .05853, A↓ .23036, B .04649, B̄ .00829, M .036, A .23036 mm. */
    @Test
    void agreesWithWhatTheEcmccfgReportPrints() {
        Positioning run = evaluate(AXIS_UP, AXIS_DOWN);
        double printed = 0.02;
        assertFigures(new double[] {7.51, 54.05, 58.53}, printed, oneWay(run.up()));
        assertFigures(new double[] {230.36, 57.27, 230.36}, printed, oneWay(run.down()));
        TwoWayFigures both = run.both().orElseThrow();
        assertFigures(new double[] {46.49, 8.29, 36.0, 230.36}, printed, both.reversalM(), both.meanReversalM(),
                both.meanErrorM(), both.accuracyM());
        assertFigures(new double[] {230.36, 114.13, 15.11, 30.63, 51.85}, printed,
                run.targets().stream().mapToDouble(TargetFigures::repeatabilityM).toArray());
    }
}
