// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import java.util.Locale;
import pitchstack.analysis.accuracy.JointTeeth;
import pitchstack.core.accuracy.teeth.Friction;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.SimulatedSeats;
import pitchstack.core.accuracy.teeth.TwoFlankLaw;
import pitchstack.export.plot.Figures;

/**
 * What is said of the teeth of a joint.
 *
 * @param sizes how sizes are written
 */
record TeethWords(Sizes sizes) {
    /** How many standard deviations hold 95 % of Gaussian numbers. */
    static final double WITHIN_95 = 1.959964;
    private static final double HALF = 0.5;
    private static final double ONE_DEVIATION = 0.841344746;
    private static final double TWO_DEVIATIONS = 0.977249868;
    private static final double MPA = 1e6;
    private static final double PER_MM = 1e-3;
    private static final String LAW = "Teeth are one-sided springs: the high ones bear first, and preload brings the"
            + " others down to bear. For many teeth with Gaussian errors of scatter σ a flank of stiffness k seats so"
            + " that Fz = N·k·σ·sin 2α·[tΦ(t) + φ(t)], where the part Φ(t) of the flanks bears, and the position"
            + " scatters by σ·√V/√(2N), V = [(t² + 1)Φ + tφ − (tΦ + φ)²]/Φ² (the law of Greenwood and Williamson, 1966,"
            + " for linear springs, applied to two flanks; N teeth, α the flank angle). It is for many teeth: with 20"
            + " it is good to about 2 %, with fewer it is worse; the check by chance says how far. Where neighbouring"
            + " teeth hang together, they average like fewer.\n\nThe stiffness of a tooth is that of a tapered beam in"
            + " bending (Euler, Bernoulli) and shear (Timoshenko, factor 6/5), loaded at the pitch line, with its"
            + " ground after O'Donnell and Cornell (1981), whose coefficients were not confirmed in the source; both"
            + " teeth give way. The stress is that of bending at the root without a fillet, of a tooth that bears its"
            + " equal part; the highest teeth bear more. Layers of a print hold less across than along: take half.\n\n"
            + "Friction is the statics of a wedge. What a row seats anew each time, dirt and creep are not part of this"
            + " page.";

    /** The first line. */
    String head(double preloadN, Joint.Held held) {
        return "At " + Figures.plain(preloadN) + " N, " + Figures.percent(held.bearingShare())
                + " of the flanks bear. The errors of the teeth leave the seat within "
                + sizes.within(WITHIN_95 * held.spreadM()) + " (95 %), which repeats.";
    }

    /** What follows from it. */
    String more(Joint joint, Joint.Held held) {
        TwoFlankLaw law = joint.law();
        return "For half of the flanks to bear it takes " + newtons(law.preloadN(HALF)) + ", for 84 % "
                + newtons(law.preloadN(ONE_DEVIATION)) + ", for 97.7 % " + newtons(law.preloadN(TWO_DEVIATIONS))
                + ", and for all " + newtons(law.fullBearingN())
                + " on average. At the preload set the root of a tooth bears "
                + stress(held.rootStressPa()) + ", and the joint gives way by 1 " + sizes.errors().symbol() + " for "
                + newtons(held.travelStiffnessNPerM() / sizes.errors().of(1)) + " along the travel.";
    }

    /** What friction does. */
    String friction(Joint joint, double preloadN, Joint.Held held) {
        Friction friction = new Friction(joint.friction());
        double alpha = joint.pair().form().flankAngleRad();
        String hold = friction.locks(alpha)
                ? "these flanks lock: no force along the travel, however large, lifts the row"
                : "a force along the travel lifts the row when it is more than "
                        + newtons(preloadN / friction.holdDownRatio(alpha));
        String jam = friction.jams(alpha) ? " A row that rests on one flank only jams there, half seated, whatever the"
                + " preload: tap it home, or use steeper flanks or a dry lubricant." : "";
        double release = friction.releaseRatio(alpha);
        String free = release > 0 ? " With the preload gone it takes a pull of " + newtons(release * preloadN)
                + " to free it." : "";
        return "With this friction " + hold + "; " + Figures.percent(friction.seatingEfficiency(alpha))
                + " of the preload reaches the flanks while they slide in, and friction can hold the seat off by up to "
                + sizes.small(held.deadBandM()) + "." + free + jam;
    }

    /** How neighbours hang together, or nothing. */
    static String neighbours(Joint joint) {
        return joint.independent() > joint.teeth() * 0.995 ? "" : joint.teeth() + " teeth whose neighbours hang"
                + " together average like " + Figures.of(joint.independent(), 2) + " independent ones.";
    }

    /** What drawing by chance found beside the law. */
    String simulated(SimulatedSeats found, Joint.Held law) {
        double off = Math.abs(found.spreadM() / law.spreadM() - 1);
        return String.format(Locale.ROOT, "%,d", found.draws()).replace(',', '\u2009') + " rows drawn by chance: "
                + Figures.of(100 * found.bearingShare(), 3) + " ± " + Figures.of(200 * found.bearingErrorShare(), 1)
                + " % of the flanks bear, and 95 % of the seats lie within " + sizes.within(found.withinM(0.95))
                + ". The law is off by " + Figures.percent(off) + " in the spread; chance explains "
                + Figures.percent(2 * found.spreadErrorM() / found.spreadM()) + ".";
    }

    /** Where the numbers come from. */
    static String sources(JointTeeth teeth) {
        StringBuilder words = new StringBuilder(LAW);
        BudgetWords.add(words, "What was assumed, as the file does not say.", teeth.assumptions());
        return words.toString();
    }

    static String newtons(double newtons) {
        return Figures.of(newtons, 2) + " N";
    }

    static String stress(double pa) {
        return Figures.of(pa / MPA, 2) + " MPa";
    }

    static String stiffness(double nPerM) {
        return Figures.of(nPerM * PER_MM, 2);
    }

    /** The heads of the table of variants; numbers stand on the right. */
    static List<String> columns() {
        return List.of("Tooth", "Flank, N/mm\t", "50 %\t", "84 %\t", "97.7 %\t", "All bear\t", "Root stress at 84 %\t");
    }
}
