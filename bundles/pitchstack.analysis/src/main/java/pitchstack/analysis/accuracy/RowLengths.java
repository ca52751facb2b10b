// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import static pitchstack.analysis.accuracy.RowFacts.text;

import java.util.Comparator;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.accuracy.rack.RackTolerance;
import pitchstack.core.accuracy.total.RowLength;
import pitchstack.core.units.Pitch;
import pitchstack.model.BedDirection;
import pitchstack.model.PrintSetup;

/**
 * Reads what is known of the length of a row: a grade, a stated uncertainty, spans of its print set-up, or none of them.
 *
 * @param facts the row
 */
record RowLengths(RowFacts facts) {
    private static final double PPM = 1e-6;

    /** What is known; a stated uncertainty goes before a grade, for it was measured. */
    RowLength read(Optional<RackTolerance> tolerance) {
        OptionalDouble stated = facts.notes().number(facts.title() + ": the uncertainty of its scale",
                facts.row().getScaleUncertaintyPpm());
        String setUp = facts.printed() ? text(facts.row().getPrintSetup()) : "";
        if (stated.isPresent()) {
            return new RowLength.Scaled(stated.getAsDouble() * PPM, setUp);
        }
        if (tolerance.isPresent()) {
            return new RowLength.Graded(tolerance.get());
        }
        if (isClosedRing()) {
            facts.notes().assume(facts.title() + ": a full ring closes on itself, so that its mean pitch cannot be off; that it may"
                    + " sit off centre is not counted.");
            return new RowLength.Scaled(0, "");
        }
        return new RowLength.Scaled(measured(setUp).orElseGet(this::usual), setUp);
    }

    /** What the grade of the row allows; without one that of a cut rack, where the row is bought. */
    Optional<RackTolerance> tolerance() {
        String text = text(facts.row().getGrade());
        if (text.isBlank()) {
            return facts.printed() || facts.rotary() || facts.row().getScaleUncertaintyPpm() > 0 ? Optional.empty()
                    : noting(": no grade is given; it counts as cut, ", Believed.BOUGHT_GRADE);
        }
        Optional<Grade> grade = Grade.parse(text);
        if (grade.isEmpty()) {
            facts.notes().refuse(facts.title() + ": “" + text + "” is not a grade; " + Grade.HINT + ".");
            return Optional.empty();
        }
        Optional<RackTolerance> tolerance = facts.rotary() ? Optional.empty() : noting(": ", grade.get());
        if (tolerance.isEmpty()) {
            facts.notes().assume(facts.title() + ": " + grade.get() + " cannot be applied: " + (facts.rotary()
                    ? "the file has no radius, so that micrometres cannot become an angle."
                    : "the length or module of the row, or the number, lies outside the standard."));
        }
        return tolerance;
    }

    private Optional<RackTolerance> noting(String how, Grade grade) {
        Optional<RackTolerance> tolerance = grade.tolerance(facts.lengthM(), facts.pitchM());
        tolerance.ifPresent(allowed -> facts.notes().assume(String.format(Locale.ROOT, "%s%s%s allows ± %.1f µm from tooth to tooth"
                + " and %.0f µm in all (as for a wheel of the same circumference, a convention); a measurement overrides it.",
                facts.title(), how, grade, allowed.pitchM() * 1e6, allowed.totalM() * 1e6)));
        return tolerance;
    }

    private boolean isClosedRing() {
        return facts.rotary() && Pitch.parse(text(facts.stage().getPitch())).teethPerTurn() == facts.row().getTeeth();
    }

    private double usual() {
        double usual = facts.printed() ? Believed.PRINTED_SCALE : Believed.BOUGHT_SCALE;
        facts.notes().assume(String.format(Locale.ROOT, "%s: nothing says how well its length is known; %.2f %% (1 σ) is taken,"
                + " common practice without a source. Measure a span of it, or a run.", facts.title(), 100 * usual));
        return usual;
    }

    private Optional<Double> measured(String setUp) {
        Optional<PrintSetup> found = facts.positioner().getPrintSetups().stream()
                .filter(one -> !setUp.isBlank() && setUp.equals(one.getName())).findFirst();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        PrintScales scales = PrintScales.of(found.get());
        scales.unreadable().forEach(facts.notes()::refuse);
        return facts.rotary() ? skew(scales) : scales.byDirection().entrySet().stream()
                .min(Comparator.comparingDouble(one -> one.getValue().scale().uncertainty())).map(this::along);
    }

    /** The file does not say which way a row lay on the bed; long spans, which tell most, are measured along rows. */
    private double along(Map.Entry<BedDirection, PrintScale> best) {
        Estimate scale = best.getValue().scale();
        facts.notes().assume(String.format(Locale.ROOT, "Print set-up “%s”: its rows are taken to lie along %s, where its spans tell"
                + " most: %+.0f ± %.0f ppm (1 σ).", facts.row().getPrintSetup(), best.getKey().getLiteral(), scale.value() / PPM,
                scale.uncertainty() / PPM));
        return doubt(scale.value(), scale.uncertainty(), scale.isSignificant());
    }

    /** A sector that is too large all over keeps its angles; only a difference between x and y changes them. */
    private Optional<Double> skew(PrintScales scales) {
        PrintScale x = scales.byDirection().get(BedDirection.X);
        PrintScale y = scales.byDirection().get(BedDirection.Y);
        if (x == null || y == null) {
            return Optional.empty();
        }
        double difference = x.scale().value() - y.scale().value();
        double uncertainty = Math.hypot(x.scale().uncertainty(), y.scale().uncertainty());
        return Optional.of(doubt(difference, uncertainty, Math.abs(difference) > 2 * uncertainty));
    }

    private double doubt(double off, double uncertainty, boolean significant) {
        if (!significant || facts.stage().getCorrectionPpm() != 0) {
            return uncertainty;
        }
        facts.notes().assume(String.format(Locale.ROOT, "Print set-up “%s”: its spans came out %+.0f ppm off; a row of it whose"
                + " pitch is not corrected may be off by that to either side. Fit a run, or print again.",
                facts.row().getPrintSetup(), off / PPM));
        return Math.hypot(uncertainty, off / Math.sqrt(3));
    }
}
