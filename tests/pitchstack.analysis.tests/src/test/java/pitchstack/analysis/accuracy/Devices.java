// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.model.Approach;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Reading;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** Small devices for tests of accuracy, in millimetres at 20 °C. */
final class Devices {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;

    private Devices() {
    }

    static Positioner of(Stage... stages) {
        Positioner positioner = FACTORY.createPositioner();
        positioner.setTitle("Test bench");
        Axis axis = FACTORY.createAxis();
        axis.setName("Slide");
        axis.getStages().addAll(List.of(stages));
        positioner.getAxes().add(axis);
        return positioner;
    }

    /** A stage whose rider of 20 teeth always covers the base row whole. */
    static Stage stage(String name, String pitch, StageSource source, int baseTeeth, int start) {
        Stage stage = FACTORY.createStage();
        stage.setName(name);
        stage.setPitch(pitch);
        stage.setSource(source);
        stage.setStart(start);
        stage.setMinimumEngaged(20);
        stage.setBaseRow(row(baseTeeth));
        stage.setRiderRow(row(20));
        return stage;
    }

    static Stage rack() {
        return stage("Rack", "5 mm", StageSource.BOUGHT, 200, 0);
    }

    static Stage printed() {
        return stage("Fine", "4.9 mm", StageSource.PRINTED, 60, 20);
    }

    private static Row row(int teeth) {
        Row row = FACTORY.createRow();
        row.setTeeth(teeth);
        return row;
    }

    static Axis axis(Positioner positioner) {
        return positioner.getAxes().get(0);
    }

    static AxisAnalysis analysis(Positioner positioner) {
        return AxisAnalysis.of(positioner, axis(positioner));
    }

    static AccuracyReading read(Positioner positioner) {
        return AccuracyReader.read(positioner, analysis(positioner));
    }

    static MeasurementRun run(Positioner positioner, String id) {
        MeasurementRun run = FACTORY.createMeasurementRun();
        run.setId(id);
        axis(positioner).getRuns().add(run);
        return run;
    }

    static Reading reading(MeasurementRun run, Approach approach, String value, Integer... setting) {
        Reading reading = FACTORY.createReading();
        reading.getSetting().addAll(List.of(setting));
        reading.setApproach(approach);
        reading.setValue(value);
        run.getReadings().add(reading);
        return reading;
    }

    static RunReading read(Positioner positioner, MeasurementRun run) {
        return RunReader.read(axis(positioner), analysis(positioner).spec(), run);
    }
}
