// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.ToLongFunction;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.LastMove;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.model.WearKind;

/** Reads an axis of the model into numbers, and notes every text that cannot be read instead of stopping at it. */
public final class AxisReader {
    private static final double FEMTOMETRES_IN_METRE = 1e15;

    private final Positioner positioner;
    private final Axis axis;
    private final boolean fractions;
    private final List<Finding> unreadable = new ArrayList<>();
    private final List<Finding> remarks = new ArrayList<>();
    private Scale scale;

    private AxisReader(Positioner positioner, Axis axis, boolean fractions) {
        this.positioner = positioner;
        this.axis = axis;
        this.fractions = fractions;
    }

    /**
     * Reads one axis.
     *
     * @param positioner the whole device, for its unit, temperature and line width
     * @param axis one of its axes
     */
    public static AxisReading read(Positioner positioner, Axis axis) {
        return read(positioner, axis, false);
    }

    /** The same, where inches may be shown as fractions. */
    static AxisReading read(Positioner positioner, Axis axis, boolean fractions) {
        return new AxisReader(positioner, axis, fractions).read();
    }

    private AxisReading read() {
        scale = readScale();
        List<StageSpec> stages = new ArrayList<>();
        for (int j = 0; j < axis.getStages().size(); j++) {
            stages.add(stage(axis.getStages().get(j), j));
        }
        AxisSpec spec = new AxisSpec(text(axis.getName()), scale, stages, axisLength("datum", axis.getDatum()).orElse(0),
                axisLength("lowest position", axis.getLow()), axisLength("highest position", axis.getHigh()), shiftLimits(),
                approach(axis.getApproach()), axisLength("tolerance", axis.getTolerance()).orElse(0),
                axisLength("wanted step", axis.getWantedStep()));
        Setting current = Setting.of(axis.getStages().stream().mapToInt(Stage::getIndex).toArray());
        Directions last = new Directions(axis.getStages().stream().map(stage -> direction(stage.getLastMove())).toList());
        double lineWidth = length("line width", Place.AXIS, positioner.getLineWidth(),
                new LinearScale(LengthUnit.MM)::parse).orElse(0) / FEMTOMETRES_IN_METRE;
        return new AxisReading(spec, current, last, lineWidth, unreadable, remarks);
    }

    private Scale readScale() {
        try {
            return Quantities.scale(positioner, axis, fractions);
        } catch (QuantityException e) {
            unreadable.add(finding("rings", Place.AXIS, "", e));
            return new RotaryScale(RotaryScale.ARC_SECONDS);
        }
    }

    private StageSpec stage(Stage stage, int j) {
        Place place = Place.stage(j);
        long nominal = length("pitch", place, text(stage.getPitch()), t -> Quantities.nominalPitch(stage, scale)).orElse(0);
        long today = length("pitch correction", place, Double.toString(stage.getCorrectionPpm()),
                t -> Quantities.pitchToday(nominal, stage, scale, positioner.getTemperatureC())).orElse(0);
        RowPair rows = new RowPair(row(stage.getBaseRow()), row(stage.getRiderRow()), stage.getStart(),
                stage.getMinimumEngaged());
        EffortCost cost = new EffortCost(milliseconds(stage.getReleaseSeconds()), milliseconds(stage.getPerToothSeconds()),
                milliseconds(stage.getReversalSeconds()));
        IndexErrors errors = new IndexErrorReader(stage, j, scale, positioner.getTemperatureC(), rows.meeting())
                .read(unreadable, remarks);
        return new StageSpec(text(stage.getName()),
                stage.getSource() == StageSource.PRINTED ? Source.PRINTED : Source.BOUGHT, nominal, today, rows, cost,
                errors);
    }

    /** People count stages from 1, the core from 0. */
    private List<ShiftLimit> shiftLimits() {
        return axis.getShiftLimits().stream().map(limit -> new ShiftLimit(limit.getLowest() - 1, limit.getHighest() - 1,
                length("shift limit", Place.AXIS, limit.getLimit(), scale::parse).orElse(0))).toList();
    }

    private static Approach approach(ApproachRule rule) {
        return switch (rule) {
            case EITHER -> Approach.EITHER;
            case FORWARD -> Approach.FORWARD;
            case BACK -> Approach.BACK;
        };
    }

    private static Direction direction(LastMove move) {
        return switch (move) {
            case NONE -> Direction.UNKNOWN;
            case FORWARD -> Direction.FORWARD;
            case BACK -> Direction.BACK;
        };
    }

    private static RowSpec row(Row row) {
        if (row == null) {
            return new RowSpec(0, List.of());
        }
        return new RowSpec(row.getTeeth(), row.getWorn().stream().map(w -> new WornRange(
                new ToothSpan(w.getFirst(), w.getLast()), w.getKind() == WearKind.BARRED ? Wear.BARRED : Wear.WORN)).toList());
    }

    private OptionalLong axisLength(String what, String text) {
        return text == null || text.isBlank() ? OptionalLong.empty() : length(what, Place.AXIS, text, scale::parse);
    }

    private OptionalLong length(String what, Place place, String text, ToLongFunction<String> parse) {
        try {
            return OptionalLong.of(parse.applyAsLong(text(text)));
        } catch (QuantityException e) {
            unreadable.add(finding(what, place, text, e));
            return OptionalLong.empty();
        }
    }

    private static Finding finding(String what, Place place, String value, QuantityException e) {
        return new Finding("unreadable-" + what.replace(' ', '-'), Severity.ERROR, place, text(value), "",
                "The " + what + " cannot be read: " + e.getMessage());
    }

    private static long milliseconds(double seconds) {
        return Math.round(seconds * 1000);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
