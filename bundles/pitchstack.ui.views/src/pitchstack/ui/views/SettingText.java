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
        return worn(axis, move, Integer.MAX_VALUE);
    }

    /**
     * The same in little room.
     *
     * @param letters the most letters a name may have, at least 1; a longer one is cut, with an ellipsis at its end
     */
    public static String worn(AxisSpec axis, PlannedSetting move, int letters) {
        return move.wornStages().isEmpty() ? "no"
                : move.wornStages().stream().map(j -> cut(stage(axis, j), letters)).collect(Collectors.joining(", "));
    }

    /** Where a setting has its stages: {@code Rack 12 · Fine row −3}. */
    public static String setting(AxisSpec axis, Setting setting) {
        return setting(axis, setting, Integer.MAX_VALUE);
    }

    /**
     * The same in little room; the indices stay whole.
     *
     * @param letters the most letters a name may have, at least 1; a longer one is cut, with an ellipsis at its end
     */
    public static String setting(AxisSpec axis, Setting setting, int letters) {
        return IntStream.range(0, setting.size())
                .mapToObj(j -> cut(stage(axis, j), letters) + " " + TrueMinus.in(Integer.toString(setting.index(j))))
                .collect(Collectors.joining(" · "));
    }

    private static String cut(String name, int letters) {
        return name.length() <= letters ? name : name.substring(0, letters - 1).stripTrailing() + "…";
    }

    /** How a stage is called, counted from 0. */
    public static String stage(AxisSpec axis, int j) {
        String name = axis.stages().get(j).name();
        return name.isBlank() ? "Stage " + (j + 1) : name;
    }
}
