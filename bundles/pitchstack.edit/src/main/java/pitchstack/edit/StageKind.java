// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/** What can be put on a stack: sound numbers to begin with, in the unit of the file, to be changed afterwards. */
public enum StageKind {
    /** A long bought rack and the body that rides on it, for travel: 30 teeth on 100. */
    BOUGHT_RACK("Rack", StageSource.BOUGHT, "5 mm", "0.25 in", "1°", new int[] {100, 30, 0}),
    /** Two printed rows of a slightly finer pitch, for the fine step: 30 teeth on 60, in the middle. */
    PRINTED_PAIR("Fine stage", StageSource.PRINTED, "4.9 mm", "0.24 in", "1°01'", new int[] {60, 30, 15}),
    /** A short coarse stage that carries the carriage: 12 teeth on 24, in the middle. */
    PLAIN_CARRIAGE("Carriage", StageSource.BOUGHT, "10 mm", "0.5 in", "2°", new int[] {24, 12, 6});

    private final String stem;
    private final StageSource source;
    private final String millimetres;
    private final String inches;
    private final String angle;
    private final int[] counts;

    StageKind(String stem, StageSource source, String millimetres, String inches, String angle, int[] counts) {
        this.stem = stem;
        this.source = source;
        this.millimetres = millimetres;
        this.inches = inches;
        this.angle = angle;
        this.counts = counts;
    }

    /** A new stage of this kind for an axis, with a name that no stage of it has. */
    public Stage stage(Axis axis) {
        return NewStack.stage(FreeName.of(axis, List.of(), stem), source, pitch(axis), counts[0], counts[1], counts[2]);
    }

    /** The pitch to begin with, as text, in the unit of the axis. */
    String pitch(Axis axis) {
        return axis.getKind() == AxisKind.ROTARY ? angle : NewStack.isInch(axis) ? inches : millimetres;
    }
}
