// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.analysis.Quantities;
import pitchstack.core.accuracy.fit.Reading;
import pitchstack.core.accuracy.fit.StageScale;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.Approach;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Stage;

/** Reads a run of measurements of an axis into numbers, and notes every reading that cannot be used. */
public final class RunReader {
    private static final double PPM = 1e-6;

    private final Axis axis;
    private final AxisSpec spec;
    private final MeasurementRun run;
    private final Scale scale;
    private final String title;
    private final Notes notes = new Notes();
    private final List<Reading> readings = new ArrayList<>();
    private final List<Integer> places = new ArrayList<>();
    private final List<Double> expectedM = new ArrayList<>();
    private int open;

    private RunReader(Axis axis, AxisSpec spec, MeasurementRun run) {
        this.axis = axis;
        this.spec = spec;
        this.run = run;
        scale = spec.scale();
        title = "Run “" + name(run) + "”";
    }

    /**
     * Reads a run.
     *
     * @param axis the axis it was taken on
     * @param spec the same in numbers, without errors
     * @param run one of its runs, or one not yet in the file
     */
    public static RunReading read(Axis axis, AxisSpec spec, MeasurementRun run) {
        return new RunReader(axis, spec, run).read();
    }

    /** What people call a run. */
    public static String name(MeasurementRun run) {
        return run.getId() == null || run.getId().isBlank() ? "without a name" : run.getId();
    }

    private RunReading read() {
        boolean rotary = scale.turn() > 0;
        double uncertaintyM = notes.quantity(title + ": the uncertainty", run.getUncertainty(), text -> Words.along(text, rotary))
                .orElse(0);
        if (uncertaintyM == 0) {
            uncertaintyM = rotary ? Believed.READING_RAD : Believed.READING_M;
            notes.assume(title + " does not say how good its readings are; all count alike, as " + Words.size(uncertaintyM, rotary)
                    + " (1 σ), and their scatter tells the rest.");
        }
        double shared = notes.number(title + ": the uncertainty of the instrument's scale", run.getInstrumentScalePpm())
                .orElseGet(() -> {
                    notes.assume(title + ": the instrument's own scale counts as exact; its certificate says how good it is.");
                    return 0;
                }) * PPM;
        List<StageScale> stages = stages(rotary);
        for (int i = 0; i < run.getReadings().size(); i++) {
            read(i, title + ", reading " + (i + 1), stages, uncertaintyM);
        }
        return new RunReading(name(run), spec, readings, places, expectedM, stages, shared, open, notes.assumptions(), notes.unreadable());
    }

    private List<StageScale> stages(boolean rotary) {
        List<StageScale> stages = new ArrayList<>();
        for (int j = 0; j < spec.stages().size(); j++) {
            Stage stage = axis.getStages().get(j);
            stages.add(new StageScale(spec.stages().get(j).title(j), Si.of(Quantities.nominalPitch(stage, scale), scale),
                    rotary ? 0 : stage.getExpansionPpmPerK() * PPM));
        }
        return stages;
    }

    private void read(int place, String about, List<StageScale> stages, double uncertaintyM) {
        pitchstack.model.Reading entry = run.getReadings().get(place);
        if (entry.getValue() == null || entry.getValue().isBlank()) {
            open++;
            return;
        }
        int indices = entry.getSetting().size();
        if (indices != spec.stages().size()) {
            notes.refuse(about + " has " + indices + (indices == 1 ? " index" : " indices") + ", but the axis has "
                    + spec.stages().size() + (spec.stages().size() == 1 ? " stage" : " stages") + "; it is left out.");
            return;
        }
        Setting setting = Setting.of(entry.getSetting().stream().mapToInt(i -> i).toArray());
        double temperatureC = entry.isSetTemperatureC() ? entry.getTemperatureC() : run.getTemperatureC();
        double expected = expectedM(setting, temperatureC, stages);
        OptionalDouble own = notes.quantity(about + ": the uncertainty", entry.getUncertainty(),
                text -> Words.along(text, scale.turn() > 0));
        positionM(entry, about, expected).ifPresent(positionM -> {
            readings.add(new Reading(setting, positionM, direction(entry.getApproach()),
                    own.orElse(0) > 0 ? own.getAsDouble() : uncertaintyM, temperatureC));
            places.add(place);
            expectedM.add(expected);
        });
    }

    /** What the instrument showed; on a rotary axis with the turns that the dial does not show. */
    private Optional<Double> positionM(pitchstack.model.Reading entry, String about, double expected) {
        try {
            double read = Si.of(scale.parse(entry.getValue()), scale);
            double turn = 2 * Math.PI;
            return Optional.of(scale.turn() == 0 ? read : read + turn * Math.rint((expected - read) / turn));
        } catch (QuantityException e) {
            notes.refuse(about + " cannot be read and is left out: " + e.getMessage());
            return Optional.empty();
        }
    }

    private double expectedM(Setting setting, double temperatureC, List<StageScale> stages) {
        double expected = Si.of(spec.datum(), scale);
        for (int j = 0; j < stages.size(); j++) {
            StageScale stage = stages.get(j);
            Stage entry = axis.getStages().get(j);
            double warmth = 1 + stage.expansionPerK() * (temperatureC - Quantities.REFERENCE_C);
            double error = Si.of(spec.stages().get(j).errors().at(setting.index(j)), scale);
            expected += setting.index(j) * stage.pitchM() * (1 + entry.getCorrectionPpm() * PPM) * warmth + error;
        }
        return expected;
    }

    private static Direction direction(Approach approach) {
        return switch (approach) {
            case UP -> Direction.FORWARD;
            case DOWN -> Direction.BACK;
            case UNKNOWN -> Direction.UNKNOWN;
        };
    }
}
