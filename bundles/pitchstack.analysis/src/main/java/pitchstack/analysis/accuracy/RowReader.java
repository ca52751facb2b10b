// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.rack.RackTolerance;
import pitchstack.core.accuracy.total.RowAccuracy;
import pitchstack.core.accuracy.total.RowLength;
import pitchstack.core.units.Pitch;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/**
 * Reads how well one row is made.
 *
 * @param positioner for its print set-ups
 * @param stage whose row it is
 * @param row the row
 * @param title how sentences name it
 * @param pitchM of the stage
 * @param rotary whether radians stand for metres
 * @param notes where assumptions go
 */
record RowReader(Positioner positioner, Stage stage, Row row, String title, double pitchM, boolean rotary, Notes notes) {
    private static final double PPM = 1e-6;
    /** The scatter of a flank whose distance from its neighbour is anywhere within ± f: f/√3 for two of them. */
    private static final double FLANKS_OF_PITCH = Math.sqrt(6);

    /** Reads it. */
    RowAccuracy read() {
        Optional<RackTolerance> tolerance = tolerance();
        double neighbours = printed() ? Math.min(1, notes.number(title + ": the correlation of neighbouring teeth",
                stage.getNeighbourCorrelation()).orElse(0)) : 0;
        return new RowAccuracy(tolerance.<RowLength>map(RowLength.Graded::new).orElseGet(this::scaled), scatter(tolerance),
                neighbours, expansion());
    }

    /** Whether it comes from a printer. */
    boolean printed() {
        return text(row.getGrade()).isBlank()
                && (!text(row.getPrintSetup()).isBlank() || stage.getSource() == StageSource.PRINTED);
    }

    /** Its material, or what is usual for what is printed or bought. */
    Material material() {
        boolean asStage = printed() == (stage.getSource() == StageSource.PRINTED);
        String own = text(row.getMaterial());
        String name = own.isBlank() && asStage ? text(stage.getMaterial()) : own;
        Material usual = printed() ? Material.PLA : Material.STEEL;
        Optional<Material> known = Materials.named(name);
        if (known.isEmpty()) {
            notes.assume(title + (name.isBlank() ? ": no material is given" : ": no usual numbers are known for “" + name + "”")
                    + "; it counts as " + usual.name() + ".");
        }
        return known.orElse(usual);
    }

    private Expansion expansion() {
        Material material = material();
        double given = stage.getExpansionPpmPerK() * PPM;
        boolean own = !text(row.getMaterial()).isBlank() && !text(row.getMaterial()).equals(text(stage.getMaterial()));
        boolean asStage = printed() == (stage.getSource() == StageSource.PRINTED);
        double usual = material.expansion().perK();
        if (rotary) {
            return material.expansion();
        }
        if (given == 0 || own || !asStage || Math.abs(given - usual) < PPM / 1000) {
            notes.assume(Materials.sentence(material));
            return material.expansion();
        }
        double doubt = material.expansion().uncertaintyPerK() / usual;
        notes.assume(String.format(Locale.ROOT, "%s: its expansion of %.1f ppm/K is taken to be known to %.0f %% (1 σ), as"
                + " usual for %s.", title, given / PPM, 100 * doubt, material.plastic() ? "plastics" : "metals"));
        return new Expansion(given, Math.abs(given) * doubt);
    }

    private Optional<RackTolerance> tolerance() {
        String text = text(row.getGrade());
        if (text.isBlank()) {
            boolean silent = !printed() && !rotary && row.getScaleUncertaintyPpm() == 0;
            Optional<RackTolerance> usual = silent ? Believed.BOUGHT_GRADE.tolerance(row.getTeeth() * pitchM, pitchM)
                    : Optional.empty();
            usual.ifPresent(allowed -> notes.assume(title + ": no grade is given; it counts as cut, " + Believed.BOUGHT_GRADE
                    + words(allowed)));
            return usual;
        }
        Optional<Grade> grade = Grade.parse(text);
        if (grade.isEmpty()) {
            notes.refuse(title + ": “" + text + "” is not a grade; " + Grade.HINT + ".");
            return Optional.empty();
        }
        Optional<RackTolerance> tolerance = rotary ? Optional.empty()
                : grade.get().tolerance(row.getTeeth() * pitchM, pitchM);
        tolerance.ifPresentOrElse(allowed -> notes.assume(title + ": " + grade.get() + words(allowed)),
                () -> notes.assume(title + ": " + grade.get() + " cannot be applied to it: "
                        + (rotary ? "the file has no radius, so that micrometres cannot become an angle."
                                : "its length, its module or the number lies outside the standard.")));
        return tolerance;
    }

    private static String words(RackTolerance allowed) {
        return String.format(Locale.ROOT, " allows ± %.0f µm from tooth to tooth and %.0f µm in all (as for a wheel of the same"
                + " circumference, a convention); a measurement overrides it.", allowed.pitchM() * 1e6, allowed.totalM() * 1e6);
    }

    private RowLength scaled() {
        OptionalDouble given = notes.number(title + ": the uncertainty of its scale", row.getScaleUncertaintyPpm());
        String setUp = printed() ? text(row.getPrintSetup()) : "";
        if (given.isPresent()) {
            return new RowLength.Scaled(given.getAsDouble() * PPM, setUp);
        }
        if (isClosedRing()) {
            notes.assume(title + ": a full ring closes on itself, so that its mean pitch cannot be off; that it may sit off"
                    + " centre is not counted.");
            return new RowLength.Scaled(0, "");
        }
        return new RowLength.Scaled(measured(setUp).orElseGet(this::usualScale), setUp);
    }

    private boolean isClosedRing() {
        return rotary && Pitch.parse(text(stage.getPitch())).teethPerTurn() == row.getTeeth();
    }

    private double usualScale() {
        double usual = printed() ? Believed.PRINTED_SCALE : Believed.BOUGHT_SCALE;
        notes.assume(String.format(Locale.ROOT, "%s: nothing says how well its length is known; %.2f %% (1 σ) is taken,"
                + " common practice without a source. Measure a span of it, or a run.", title, 100 * usual));
        return usual;
    }

    /** From the spans of its set-up: the worse direction, as the file does not say which way the row lay. */
    private Optional<Double> measured(String setUp) {
        Optional<PrintSetup> found = positioner.getPrintSetups().stream()
                .filter(one -> !setUp.isBlank() && setUp.equals(one.getName())).findFirst();
        if (found.isEmpty()) {
            return Optional.empty();
        }
        PrintScales scales = PrintScales.of(found.get());
        scales.unreadable().forEach(notes::refuse);
        return scales.byDirection().values().stream().map(this::doubt).max(Comparator.naturalOrder());
    }

    private double doubt(PrintScale scale) {
        boolean corrected = stage.getCorrectionPpm() != 0;
        double left = corrected || !scale.scale().isSignificant() ? 0 : Math.abs(scale.scale().value());
        if (left > 0) {
            notes.assume(String.format(Locale.ROOT, "Print set-up “%s”: its spans came out %+.0f ppm off and the pitch of %s is"
                    + " not corrected; half of the budget's doubt of its length is that. Fit a run, or print again by the factor"
                    + " %.5f.", row.getPrintSetup(), scale.scale().value() / PPM, title, scale.factor()));
        }
        return Math.hypot(scale.scale().uncertainty(), left / Math.sqrt(3));
    }

    private double scatter(Optional<RackTolerance> tolerance) {
        boolean asStage = printed() == (stage.getSource() == StageSource.PRINTED);
        OptionalDouble given = stageScatter();
        if (given.isPresent() && (asStage || tolerance.isEmpty())) {
            return given.getAsDouble();
        }
        if (tolerance.isPresent()) {
            return tolerance.get().pitchM() / FLANKS_OF_PITCH;
        }
        double usual = rotary ? printed() ? Believed.PRINTED_SCATTER_RAD : Believed.BOUGHT_SCATTER_RAD
                : printed() ? Believed.PRINTED_SCATTER_M : Believed.BOUGHT_SCATTER_M;
        notes.assume(title + ": no scatter of single teeth is given; " + Words.size(usual, rotary)
                + " (1 σ) is taken, common practice without a source.");
        return usual;
    }

    private OptionalDouble stageScatter() {
        return notes.quantity(title + ": the scatter of teeth", stage.getScatter(), text -> Words.along(text, rotary));
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
