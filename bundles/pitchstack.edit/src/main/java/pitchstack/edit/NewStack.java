// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.ShiftLimit;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** What a new document, and a new stage in it, starts from: sound numbers that pass the checks, to be changed. */
public final class NewStack {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;
    /** The United States, Liberia and Myanmar. */
    private static final Set<String> INCH_COUNTRIES = Set.of("US", "LR", "MM");

    private NewStack() {
    }

    /** The unit that lengths are given in where a person's computer stands: inches in the three countries that use them. */
    public static DisplayUnit unit(Locale locale) {
        return INCH_COUNTRIES.contains(locale.getCountry()) ? DisplayUnit.INCH : DisplayUnit.MM;
    }

    /** A millimetre positioner with one axis: a bought 5 mm rack, and a printed pair at 4.9 mm for steps of 0.1 mm. */
    public static Positioner positioner() {
        return positioner(DisplayUnit.MM);
    }

    /** A positioner with one axis: a bought rack and a printed pair, for steps of 0.1 mm or of 0.010 in. */
    public static Positioner positioner(DisplayUnit unit) {
        boolean inch = unit == DisplayUnit.INCH;
        Positioner positioner = FACTORY.createPositioner();
        positioner.setTitle("New positioner");
        positioner.setUnit(unit);
        positioner.setTitleBlock(FACTORY.createTitleBlock());
        Axis axis = FACTORY.createAxis();
        axis.setName("Axis");
        axis.setTolerance(inch ? "0.005 in" : "0.05 mm");
        axis.setWantedStep(inch ? "0.010 in" : "0.1 mm");
        positioner.getAxes().add(axis);
        axis.getStages().add(StageKind.BOUGHT_RACK.stage(axis));
        axis.getStages().add(stage("Fine stage", StageSource.PRINTED, StageKind.PRINTED_PAIR.pitch(axis), 90, 30, 30));
        return positioner;
    }

    /** A printed stage to put on top of an axis: 30 teeth on 60, of the rack's pitch in the unit of the file. */
    public static Stage stage(Axis axis) {
        return stage("Stage " + (axis.getStages().size() + 1), StageSource.PRINTED, StageKind.BOUGHT_RACK.pitch(axis), 60, 30,
                15);
    }

    /** A limit of 10 mm, 0.4 in or 10° on all stages of an axis together. */
    public static ShiftLimit shiftLimit(Axis axis) {
        ShiftLimit limit = FACTORY.createShiftLimit();
        limit.setHighest(Math.max(1, axis.getStages().size()));
        limit.setLimit(axis.getKind() == AxisKind.ROTARY ? "10°" : isInch(axis) ? "0.4 in" : "10 mm");
        return limit;
    }

    /** One tooth marked as worn. */
    public static WornRange wornRange(int tooth) {
        WornRange range = FACTORY.createWornRange();
        range.setFirst(tooth);
        range.setLast(tooth);
        range.setKind(WearKind.WORN);
        return range;
    }

    /**
     * A run without readings, with an id that no run of the document has.
     *
     * @param axis the axis it is to join
     * @param date when it is measured
     */
    public static MeasurementRun run(Axis axis, LocalDate date) {
        MeasurementRun run = FACTORY.createMeasurementRun();
        run.setDate(date.toString());
        run.setTemperatureC(axis.eContainer() instanceof Positioner positioner ? positioner.getTemperatureC()
                : run.getTemperatureC());
        Set<String> taken = axis.eContainer() instanceof Positioner positioner
                ? positioner.getAxes().stream().flatMap(one -> one.getRuns().stream()).map(MeasurementRun::getId)
                        .filter(Objects::nonNull).collect(Collectors.toSet())
                : Set.of();
        int number = 1;
        while (taken.contains("run-" + number)) {
            number++;
        }
        run.setId("run-" + number);
        return run;
    }

    /** Whether the file of an axis speaks in inches. */
    static boolean isInch(Axis axis) {
        return axis.eContainer() instanceof Positioner positioner && positioner.getUnit() == DisplayUnit.INCH;
    }

    static Stage stage(String name, StageSource source, String pitch, int base, int rider, int start) {
        Stage stage = FACTORY.createStage();
        stage.setName(name);
        stage.setSource(source);
        stage.setPitch(pitch);
        stage.setStart(start);
        stage.setMinimumEngaged(Math.min(12, rider));
        stage.setBaseRow(row(base));
        stage.setRiderRow(row(rider));
        return stage;
    }

    private static Row row(int teeth) {
        Row row = FACTORY.createRow();
        row.setTeeth(teeth);
        return row;
    }
}
