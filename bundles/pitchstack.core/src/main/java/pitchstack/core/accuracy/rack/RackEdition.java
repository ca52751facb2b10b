// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.rack;

/**
 * The editions of ISO 1328-1, whose grades are not interchangeable. Formulas in micrometres for d and m in millimetres, as
 * found in public programs that quote them; the texts themselves were not at hand.
 */
public enum RackEdition {
    /** Of 1995: diameters and modules go in by the geometric mean of their range. */
    ISO_1995(0, 12, 5, 10_000, 0.5, 70) {
        @Override
        double pitchUm(double d, double m) {
            return 0.3 * (mean(m, MODULES) + 0.4 * Math.sqrt(mean(d, DIAMETERS))) + 4;
        }

        @Override
        double totalUm(double d, double m) {
            return 0.3 * mean(m, MODULES) + 1.25 * Math.sqrt(mean(d, DIAMETERS)) + 7;
        }
    },
    /** Of 2013. */
    ISO_2013(1, 11, 5, 15_000, 0.5, 70) {
        @Override
        double pitchUm(double d, double m) {
            return 0.001 * d + 0.4 * m + 5;
        }

        @Override
        double totalUm(double d, double m) {
            return 0.002 * d + 0.55 * Math.sqrt(d) + 0.7 * m + 12;
        }
    };

    private static final double[] DIAMETERS = {5, 20, 50, 125, 280, 560, 1000, 1600, 2500, 4000, 6000, 8000, 10_000};
    private static final double[] MODULES = {0.5, 2, 3.5, 6, 10, 16, 25, 40, 70};

    private final int firstGrade;
    private final int lastGrade;
    private final double leastMm;
    private final double mostMm;
    private final double leastModuleMm;
    private final double mostModuleMm;

    RackEdition(int firstGrade, int lastGrade, double leastMm, double mostMm, double leastModuleMm, double mostModuleMm) {
        this.firstGrade = firstGrade;
        this.lastGrade = lastGrade;
        this.leastMm = leastMm;
        this.mostMm = mostMm;
        this.leastModuleMm = leastModuleMm;
        this.mostModuleMm = mostModuleMm;
    }

    /** Single pitch deviation of grade 5, not rounded. */
    abstract double pitchUm(double diameterMm, double moduleMm);

    /** Total cumulative pitch deviation of grade 5, not rounded. */
    abstract double totalUm(double diameterMm, double moduleMm);

    boolean covers(int grade, double diameterMm, double moduleMm) {
        return firstGrade <= grade && grade <= lastGrade && leastMm <= diameterMm && diameterMm <= mostMm
                && leastModuleMm <= moduleMm && moduleMm <= mostModuleMm;
    }

    /** The geometric mean of the limits between which a number lies, the upper one included. */
    private static double mean(double number, double[] limits) {
        int upper = 1;
        while (limits[upper] < number) {
            upper++;
        }
        return Math.sqrt(limits[upper - 1] * limits[upper]);
    }
}
