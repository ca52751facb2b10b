// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.rack;

import java.util.Optional;

/**
 * What a grade of ISO 1328-1 allows a rack, by the wheel-equivalent convention: neither edition covers racks, so one is
 * taken for the wheel whose circumference is its length, d = L/π. A measured rack makes this void.
 *
 * @param pitchM single pitch deviation allowed, ± this
 * @param totalM total cumulative pitch deviation allowed: the range of the error over the rack
 */
public record RackTolerance(double pitchM, double totalM) {
    private static final double MM = 1000;
    private static final double UM = 1e-6;
    private static final int BASE_GRADE = 5;
    private static final double WHOLE_FROM_UM = 10;
    private static final double HALF_FROM_UM = 5;

    /**
     * The tolerances, rounded as the standard prints them; nothing outside its scope, beyond which it is not to be
     * stretched.
     *
     * @param lengthM of the toothed part
     */
    public static Optional<RackTolerance> of(RackEdition edition, int grade, double lengthM, double moduleM) {
        double d = lengthM * MM / Math.PI;
        double m = moduleM * MM;
        if (!edition.covers(grade, d, m)) {
            return Optional.empty();
        }
        double steps = Math.pow(2, (grade - BASE_GRADE) / 2.0);
        return Optional.of(new RackTolerance(rounded(edition.pitchUm(d, m) * steps) * UM,
                rounded(edition.totalUm(d, m) * steps) * UM));
    }

    /** To whole micrometres above 10, to halves from 5, to tenths below. */
    private static double rounded(double um) {
        if (um > WHOLE_FROM_UM) {
            return Math.rint(um);
        }
        return um >= HALF_FROM_UM ? Math.rint(um * 2) / 2 : Math.rint(um * 10) / 10;
    }

    /**
     * What is believed of a way over so many teeth. Two points of the rack lie each anywhere within half the total deviation
     * of its mean, so their difference is triangular within ± the total: F/√6. Over few teeth the single pitches allow less:
     * each off by its whole tolerance the same way, rectangular: n·f/√3.
     *
     * @param teeth how many, at least 0
     * @return a standard uncertainty in metres
     */
    public double believedM(int teeth) {
        return Math.min(teeth * pitchM / Math.sqrt(3), totalM / Math.sqrt(6));
    }
}
