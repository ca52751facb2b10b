// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Collectors;
import pitchstack.analysis.accuracy.Corrections;
import pitchstack.analysis.accuracy.CorrectionGain;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.accuracy.fit.Residual;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;

/** A fit for a person. */
final class FitText {
    private static final double PPM = 1e-6;

    private final PrintWriter out;
    private final AxisSpec axis;
    private final RunStudy study;
    private final Optional<CorrectionGain> gain;
    private final List<Corrections.Change> changes;

    FitText(PrintWriter out, AxisSpec axis, RunStudy study, Optional<CorrectionGain> gain,
            List<Corrections.Change> changes) {
        this.out = out;
        this.axis = axis;
        this.study = study;
        this.gain = gain;
        this.changes = changes;
    }

    /** Writes what came of it. */
    void write(String title) {
        int readings = study.run().readings().size();
        out.println(title + ", axis “" + axis.name() + "”, run “" + study.run().name() + "”: " + readings
                + (readings == 1 ? " reading" : " readings")
                + (study.run().open() > 0 ? ", " + study.run().open() + " still to be read" : ""));
        out.println();
        study.fit().fit().ifPresentOrElse(this::write, () -> out.println(study.fit().whyNot().orElseThrow()));
        if (!study.run().assumptions().isEmpty()) {
            out.println();
            study.run().assumptions().forEach(out::println);
        }
    }

    private void write(PitchFit fit) {
        TextTable table = new TextTable("Stage", "correction", "95 %", "in the file before");
        for (Corrections.Change change : changes) {
            table.add(change.title(), ppm(change.toPpm()), "± " + unsigned(fit.correction(change.stage()).within() / PPM),
                    ppm(change.fromPpm()));
        }
        table.write(out);
        out.println();
        out.println("Datum: " + withBand(fit.datumM()));
        fit.reversalM().ifPresent(reversal -> out.println("Reversal, from below less from above: " + withBand(reversal)));
        out.println("Scatter of a reading about the fit: " + size(deviation(fit)) + " (1 σ), "
                + String.format(Locale.ROOT, "%.1f", fit.scatterRatio()) + " times what the readings state");
        writeOutliers(fit);
        study.fit().maps().forEach(this::write);
        gain.ifPresent(this::write);
    }

    private static double deviation(PitchFit fit) {
        double squares = fit.residuals().stream().mapToDouble(residual -> residual.residualM() * residual.residualM()).sum();
        return Math.sqrt(squares / fit.freedom());
    }

    private void writeOutliers(PitchFit fit) {
        List<Residual> outliers = fit.outliers();
        out.println("Readings farther off than chance explains: " + (outliers.isEmpty() ? "none" : outliers.size()
                + "; look for a miscounted tooth or a slip of the pen"));
        for (Residual outlier : outliers) {
            out.println("  " + TrueMinus.in(new Wording(axis).setting(outlier.reading().setting()) + ": "
                    + size(outlier.residualM())) + " off");
        }
    }

    private void write(IndexErrorMap map) {
        IndexErrorMap significant = map.significant();
        String title = axis.stages().get(map.stage()).title(map.stage());
        out.println("Errors of single indices of " + title + ": " + map.byIndex().size() + " told, "
                + (significant.byIndex().isEmpty() ? "none larger than its scatter" : "larger than their scatter "
                        + significant.byIndex().entrySet().stream().map(one -> TrueMinus.in("at " + one.getKey() + " "
                                + signed(one.getValue().value()))).collect(Collectors.joining(", "))));
    }

    private void write(CorrectionGain gain) {
        out.println();
        TextTable table = new TextTable("Target", "position", "off as planned before", "off as planned now");
        for (CorrectionGain.Gained one : gain.stops()) {
            table.add(one.stop().name(), TrueMinus.in(axis.scale().format(one.stop().target())), error(one.trulyOff()),
                    error(one.after().map(move -> OptionalLong.of(move.error())).orElse(OptionalLong.empty())));
        }
        table.write(out);
        out.println("Within tolerance by these pitches: " + gain.heldBefore() + " of " + gain.stops().size() + " before, "
                + gain.heldAfter() + " now. Error of the pitches alone; budget tells the rest.");
    }

    private String error(OptionalLong error) {
        return error.isEmpty() ? "not reached" : TrueMinus.in(axis.scale().formatError(error.getAsLong()));
    }

    private String withBand(Estimate estimate) {
        return signed(estimate.value()) + " ± " + size(estimate.within());
    }

    private String signed(double m) {
        return TrueMinus.in((m < 0 ? "-" : "+") + size(Math.abs(m)));
    }

    private String size(double m) {
        return Words.size(m, axis.scale());
    }

    private static String ppm(double ppm) {
        return ppm == 0 ? "0" : TrueMinus.in(String.format(Locale.ROOT, "%+.1f ppm", ppm));
    }

    private static String unsigned(double ppm) {
        return String.format(Locale.ROOT, "%.1f ppm", ppm);
    }
}
