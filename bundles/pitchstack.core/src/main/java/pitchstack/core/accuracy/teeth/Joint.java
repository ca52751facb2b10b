// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * The teeth of a joint under a preload, by the law for many teeth with two flanks. Where neighbouring errors hang
 * together, as many teeth bear, but they average like fewer: the spread is that of the law times √(N/N_eff).
 *
 * @param pair a tooth against its mate
 * @param variant how the teeth are softened
 * @param teeth how many are engaged, at least 1
 * @param independent how many independent teeth average as well, above 0
 * @param scatterM standard deviation of a flank along the travel, both rows together, above 0
 * @param friction its coefficient, at least 0
 */
public record Joint(ToothPair pair, ToothVariant variant, int teeth, double independent, double scatterM,
        double friction) {
    /**
     * What a preload does.
     *
     * @param bearingShare which part of the flanks bears, from 0 to 1
     * @param spreadM standard deviation of the position that the errors of the teeth make
     * @param deadBandM how far to either side friction can hold the joint
     * @param travelStiffnessNPerM against force along the travel
     * @param rootStressPa the bending stress in the root of a tooth that bears its part
     */
    public record Held(double bearingShare, double spreadM, double deadBandM, double travelStiffnessNPerM,
            double rootStressPa) { }

    /** The law. */
    public TwoFlankLaw law() {
        return new TwoFlankLaw(teeth, pair.flankNPerM(variant), scatterM, pair.form().flankAngleRad());
    }

    /**
     * What a preload does.
     *
     * @param preloadN above 0
     */
    public Held at(double preloadN) {
        TwoFlankLaw.Point point = law().at(preloadN, friction);
        // Fz/(2·N·share·sin α) along the normal of each flank that bears, cos α of it across the tooth.
        double across = preloadN / (2 * teeth * point.bearingShare() * Math.tan(pair.form().flankAngleRad()));
        return new Held(point.bearingShare(), point.spreadM() * Math.sqrt(teeth / independent), point.deadBandM(),
                point.travelStiffnessNPerM(), across * pair.rootStressPaPerN(variant));
    }

    /** The same with the teeth softened in another way. */
    public Joint with(ToothVariant other) {
        return new Joint(pair, other, teeth, independent, scatterM, friction);
    }

    /**
     * The same to be simulated.
     *
     * @param preloadN above 0
     * @param neighbours correlation of neighbouring errors, from 0 up to but not including 1
     */
    public Seating seating(double preloadN, double neighbours) {
        return new Seating(teeth, pair.flankNPerM(variant), scatterM, pair.form().flankAngleRad(), preloadN,
                neighbours);
    }
}
