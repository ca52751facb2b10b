// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
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

    private NewStack() {
    }

    /** A millimetre positioner with one axis: a bought 5 mm rack, and a printed pair at 4.9 mm for steps of 0.1 mm. */
    public static Positioner positioner() {
        Positioner positioner = FACTORY.createPositioner();
        positioner.setTitle("New positioner");
        positioner.setUnit(DisplayUnit.MM);
        positioner.setTitleBlock(FACTORY.createTitleBlock());
        Axis axis = FACTORY.createAxis();
        axis.setName("Axis");
        axis.setTolerance("0.05 mm");
        axis.setWantedStep("0.1 mm");
        axis.getStages().add(stage("Rack", StageSource.BOUGHT, "5 mm", 100, 30, 0));
        axis.getStages().add(stage("Fine stage", StageSource.PRINTED, "4.9 mm", 90, 30, 30));
        positioner.getAxes().add(axis);
        return positioner;
    }

    /** A printed stage to put on top of an axis: 30 teeth of 5 mm on 60. */
    public static Stage stage(Axis axis) {
        return stage("Stage " + (axis.getStages().size() + 1), StageSource.PRINTED, "5 mm", 60, 30, 15);
    }

    /** A limit of 10 mm on all stages of an axis together. */
    public static ShiftLimit shiftLimit(Axis axis) {
        ShiftLimit limit = FACTORY.createShiftLimit();
        limit.setHighest(Math.max(1, axis.getStages().size()));
        limit.setLimit(axis.getKind() == AxisKind.LINEAR ? "10 mm" : "10°");
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

    private static Stage stage(String name, StageSource source, String pitch, int base, int rider, int start) {
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
