// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import java.io.IOException;
import java.nio.file.Path;
import pitchstack.edit.NewStack;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;
import pitchstack.model.file.StackFile;

/** Positioners for the tests, whose numbers are easy to follow by hand. */
final class Stacks {
    private Stacks() {
    }

    /** A 5 mm rack of 100 teeth under a rider of 30 (indices −18 to 88), and a 4.9 mm pair on it (−48 to 48). */
    static Positioner pair() {
        return NewStack.positioner();
    }

    /** The same with base teeth 60 and 61 of the rack barred: the 30 rider teeth meet them at indices 31 to 61. */
    static Positioner barred() {
        Positioner positioner = pair();
        WornRange range = NewStack.wornRange(60);
        range.setLast(61);
        range.setKind(WearKind.BARRED);
        positioner.getAxes().get(0).getStages().get(0).getBaseRow().getWorn().add(range);
        return positioner;
    }

    /** A rack of so many teeth of 2 mm under a rider of 50, and a short pair on it. */
    static Positioner rack(int teeth) {
        Positioner positioner = pair();
        Stage rack = positioner.getAxes().get(0).getStages().get(0);
        rack.setPitch("2 mm");
        rack.getBaseRow().setTeeth(teeth);
        rack.getRiderRow().setTeeth(50);
        rack.setIndex(teeth / 2);
        return positioner;
    }

    /** A long rack of 2 mm with marked teeth, and five pairs on it. */
    static Positioner six(int teeth) {
        Positioner positioner = rack(teeth);
        Axis axis = positioner.getAxes().get(0);
        WornRange worn = NewStack.wornRange(teeth / 2 + 5);
        worn.setLast(teeth / 2 + 800);
        axis.getStages().get(0).getBaseRow().getWorn().add(worn);
        while (axis.getStages().size() < 6) {
            Stage stage = NewStack.stage(axis);
            stage.setPitch(3 - axis.getStages().size() / 100.0 + " mm");
            axis.getStages().add(stage);
        }
        return positioner;
    }

    /** An axis without a stage. */
    static Positioner empty() {
        Positioner positioner = pair();
        positioner.getAxes().get(0).getStages().clear();
        return positioner;
    }

    /** Two axes, X and Y. */
    static Positioner plate() {
        Positioner positioner = pair();
        positioner.getAxes().get(0).setName("X");
        Axis y = pair().getAxes().get(0);
        y.setName("Y");
        positioner.getAxes().add(y);
        return positioner;
    }

    /** Saves a positioner and gives the file. */
    static Path save(Positioner positioner, Path file) throws IOException {
        StackFile.save(positioner, file);
        return file;
    }

    /** A worn range of one tooth. */
    static WornRange worn(int tooth) {
        WornRange range = PitchstackFactory.eINSTANCE.createWornRange();
        range.setFirst(tooth);
        range.setLast(tooth);
        return range;
    }
}
