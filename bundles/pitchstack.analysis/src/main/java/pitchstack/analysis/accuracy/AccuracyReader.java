// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.thermal.Temperature;
import pitchstack.core.accuracy.total.AxisAccuracy;
import pitchstack.core.accuracy.total.StageAccuracy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Reads how well an axis is made, held and measured, and says in plain sentences what it had to assume. */
public final class AccuracyReader {
    private final Positioner positioner;
    private final Axis axis;
    private final AxisSpec spec;
    private final Notes notes;

    private AccuracyReader(Positioner positioner, AxisAnalysis analysis, Notes notes) {
        this.positioner = positioner;
        this.notes = notes;
        axis = analysis.axis();
        spec = analysis.spec();
    }

    /**
     * Reads an axis.
     *
     * @param positioner the whole device, for temperature, work and print set-ups
     * @param analysis of one of its axes, without errors
     * @throws IllegalArgumentException if the axis has errors
     */
    public static AccuracyReading read(Positioner positioner, AxisAnalysis analysis) {
        if (analysis.hasErrors()) {
            throw new IllegalArgumentException("An axis with errors has no accuracy: " + analysis.findings());
        }
        return new AccuracyReader(positioner, analysis, new Notes()).read();
    }

    /** Reads what is said of the axis and not of one stage, for the notes alone. */
    static void readGeneral(Positioner positioner, AxisAnalysis analysis, Notes notes) {
        AccuracyReader reader = new AccuracyReader(positioner, analysis, notes);
        reader.sharedScale();
        reader.datum();
        reader.temperature(analysis.spec().scale().turn() > 0);
    }

    private AccuracyReading read() {
        Scale scale = spec.scale();
        boolean rotary = scale.turn() > 0;
        FittedScales fitted = FittedScales.of(axis, spec, notes);
        List<StageAccuracy> stages = new ArrayList<>();
        for (int j = 0; j < spec.stages().size(); j++) {
            Stage stage = axis.getStages().get(j);
            stages.add(new StageReader(positioner, stage, spec.stages().get(j), j, scale, fitted.mapped(j), notes).read());
            noteWarmth(stage, spec.stages().get(j).title(j), rotary);
        }
        AxisAccuracy accuracy = new AxisAccuracy(stages, sharedScale(), fitted.fitted(), datum(), temperature(rotary),
                rotary ? Optional.empty() : work(), rotary);
        notes.assume("A setting counts from a datum set with every index at 0. Deflection under load, wear since, squareness and"
                + " tilt are not counted.");
        return new AccuracyReading(spec, accuracy, notes.assumptions(), notes.unreadable());
    }

    private double sharedScale() {
        double shared = positioner.getSharedScale();
        if (!(shared >= 0 && shared <= 1)) {
            notes.refuse("The correlation of scales printed together is " + shared + "; it must be from 0 to 1.");
            return 0;
        }
        notes.assume(String.format(Locale.ROOT, "Rows of one print set-up share their error of scale with a correlation of %.2f;"
                + " other rows have nothing in common.", shared));
        return shared;
    }

    private double datum() {
        boolean rotary = spec.scale().turn() > 0;
        return notes.quantity("The uncertainty of the datum", axis.getDatumUncertainty(), text -> Words.along(text, rotary))
                .orElseGet(() -> {
                    notes.assume("Nothing says how well the datum is known; it counts as exact.");
                    return 0;
                });
    }

    private Temperature temperature(boolean rotary) {
        double half = positioner.getTemperatureHalfWidthK();
        if (!(half >= 0) || Double.isInfinite(half)) {
            notes.refuse("The temperature is known to ± " + half + " K; that must be a number of at least 0.");
            half = 0;
        }
        if (!rotary) {
            notes.assume(String.format(Locale.ROOT, "%.1f °C, anywhere within ± %.1f K alike; stack and work have the same"
                    + " temperature, and its effect is taken to be corrected.", positioner.getTemperatureC(), half));
        }
        return new Temperature(positioner.getTemperatureC(), half / Math.sqrt(3));
    }

    private void noteWarmth(Stage stage, String title, boolean rotary) {
        double rise = positioner.getTemperatureC() - Temperature.REFERENCE_C;
        if (!rotary && rise != 0 && stage.getExpansionPpmPerK() == 0) {
            notes.assume(String.format(Locale.ROOT, "%s: the file gives no expansion, so that its positions are not corrected for"
                    + " %+.1f K, and the budget does not count that; enter its expansion.", title, rise));
        }
    }

    private Optional<Expansion> work() {
        String name = positioner.getWorkMaterial() == null ? "" : positioner.getWorkMaterial();
        Optional<Material> known = Materials.named(name);
        known.ifPresentOrElse(work -> notes.assume(Materials.sentence(work)), () -> notes.assume(name.isBlank()
                ? "No material of the work is given; its own growth is not counted."
                : "No usual numbers are known for work of “" + name + "”; its own growth is not counted."));
        return known.map(Material::expansion);
    }
}
