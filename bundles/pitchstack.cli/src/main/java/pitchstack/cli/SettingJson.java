// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Step;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;

/**
 * A setting that can be moved to, for other programs: the same members wherever one stands.
 *
 * @param axis the axis that was planned on
 */
record SettingJson(AxisSpec axis) {
    /** The names of the members. */
    static final List<String> MEMBERS = List.of("setting", "position", "error", "effortSeconds", "steps", "worn");

    /** Writes the members into the object that is open. */
    void write(JsonWriter json, PlannedSetting planned) throws IOException {
        json.name("setting").beginArray();
        for (int index : planned.setting().toArray()) {
            json.value(index);
        }
        json.endArray();
        json.name("position").value(axis.scale().decimal(planned.position()));
        json.name("error").value(axis.scale().decimal(planned.error()));
        json.name("effortSeconds").jsonValue(Wording.seconds(planned.effortMs()));
        json.name("steps").beginArray();
        for (Step step : planned.steps()) {
            json.beginObject().name("stage").value(stage(step.stage())).name("from").value(step.from())
                    .name("to").value(step.to())
                    .name("kind").value(step.kind().name().toLowerCase(Locale.ROOT)).endObject();
        }
        json.endArray();
        json.name("worn").beginArray();
        for (int stage : planned.wornStages()) {
            json.value(stage(stage));
        }
        json.endArray();
    }

    private String stage(int stage) {
        return axis.stages().get(stage).name();
    }
}
