// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** Small invented stacks. */
final class Samples {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;

    private Samples() {
    }

    /** One axis of printed stages at the given pitches, each a rider of 20 teeth in the middle of a base of 100. */
    static Positioner positioner(AxisKind kind, String... pitches) {
        Positioner positioner = FACTORY.createPositioner();
        Axis axis = FACTORY.createAxis();
        axis.setName("Axis");
        axis.setKind(kind);
        for (String pitch : pitches) {
            axis.getStages().add(stage("Stage " + (axis.getStages().size() + 1), pitch));
        }
        positioner.getAxes().add(axis);
        return positioner;
    }

    private static Stage stage(String name, String pitch) {
        Stage stage = FACTORY.createStage();
        stage.setName(name);
        stage.setSource(StageSource.PRINTED);
        stage.setPitch(pitch);
        stage.setStart(40);
        stage.setMinimumEngaged(12);
        stage.setBaseRow(row(100));
        stage.setRiderRow(row(20));
        return stage;
    }

    private static Row row(int teeth) {
        Row row = FACTORY.createRow();
        row.setTeeth(teeth);
        return row;
    }
}
