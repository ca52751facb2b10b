// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** A planned setting in the few words of a table's cells. */
public final class SettingText {
    /** What the choices of when to use worn teeth mean, wherever they are offered. */
    public static final String WORN_CHOICES = "Avoid: worn teeth only where no clean setting comes within the tolerance. Allow:"
            + " as readily as clean ones. Never: not at all. Barred teeth are never used.";

    private SettingText() {
    }

    /** An error with its sign; one that would be rounded away is not called nothing: {@code +<0.0001 mm}. */
    public static String error(Scale scale, long error) {
        String text = scale.formatError(error);
        boolean lost = error != 0 && text.equals(scale.formatError(0));
        return TrueMinus.in(lost ? (error > 0 ? "+<" : "-<") + scale.smallestSize() : text);
    }

    /** The stages that stand on worn teeth, or {@code no}. */
    public static String worn(AxisSpec axis, PlannedSetting move) {
        return move.wornStages().isEmpty() ? "no"
                : move.wornStages().stream().map(j -> stage(axis, j)).collect(Collectors.joining(", "));
    }

    /** Where a setting has its stages: {@code Rack 12 · Fine row −3}. */
    public static String setting(AxisSpec axis, Setting setting) {
        return IntStream.range(0, setting.size())
                .mapToObj(j -> stage(axis, j) + " " + TrueMinus.in(Integer.toString(setting.index(j))))
                .collect(Collectors.joining(" · "));
    }

    /** How a stage is called, counted from 0. */
    public static String stage(AxisSpec axis, int j) {
        String name = axis.stages().get(j).name();
        return name.isBlank() ? "Stage " + (j + 1) : name;
    }
}
