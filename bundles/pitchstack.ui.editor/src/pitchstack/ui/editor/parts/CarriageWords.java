// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** Where a carriage stands, in words. */
public final class CarriageWords {
    private CarriageWords() {
    }

    /** Where a setting puts the carriage; where a text of the axis cannot be read, nobody can tell. */
    public static String position(AxisAnalysis analysis, Setting setting) {
        OptionalLong position = analysis.position(setting);
        return position.isPresent() ? TrueMinus.in(analysis.spec().scale().format(position.getAsLong()))
                : "Position cannot be told";
    }

    /** What a scale measures, with its unit. */
    static String measured(Scale scale) {
        return scale instanceof LinearScale linear ? "Position, " + linear.unit().symbol() : "Angle, °";
    }
}
