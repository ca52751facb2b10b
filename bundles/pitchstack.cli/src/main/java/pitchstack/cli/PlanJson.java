// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Answer.Reached;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;

/**
 * An answer for other programs. Positions and errors are exact decimals in strings, since a JSON number may be read as
 * a float: millimetres on a linear axis, degrees on a rotary one. What does not apply to an answer is null, so that
 * every answer has the same members.
 */
final class PlanJson {
    private final AxisSpec axis;
    private final PlanRequest request;
    private final boolean listAlternatives;

    /**
     * @param axis the axis that was planned on
     * @param request what was asked
     * @param listAlternatives whether the answer holds the list of alternatives, be it empty
     */
    PlanJson(AxisSpec axis, PlanRequest request, boolean listAlternatives) {
        this.axis = axis;
        this.request = request;
        this.listAlternatives = listAlternatives;
    }

    /** An answer to the request, on one line. */
    String of(Answer answer) {
        return Json.text(json -> {
            json.beginObject();
            json.name("reached").value(answer instanceof Reached);
            json.name("unit").value(axis.scale().turn() == 0 ? "mm" : "deg");
            if (answer instanceof Reached reached) {
                write(json, reached);
            } else if (answer instanceof Nearest nearest) {
                write(json, nearest);
            }
            json.endObject();
        });
    }

    private void write(JsonWriter json, Reached reached) throws IOException {
        new SettingJson(axis).write(json, reached.best());
        writeAlternatives(json, reached.alternatives());
        for (String absent : List.of("below", "above", "reason")) {
            json.name(absent).nullValue();
        }
    }

    private void write(JsonWriter json, Nearest nearest) throws IOException {
        for (String absent : SettingJson.MEMBERS) {
            json.name(absent).nullValue();
        }
        writeAlternatives(json, List.of());
        json.name("below");
        writeObject(json, nearest.below().orElse(null));
        json.name("above");
        writeObject(json, nearest.above().orElse(null));
        json.name("reason").value(new Wording(axis).reason(request.target(), request.tolerance(), nearest));
    }

    private void writeAlternatives(JsonWriter json, List<PlannedSetting> alternatives) throws IOException {
        if (!listAlternatives) {
            return;
        }
        json.name("alternatives").beginArray();
        for (PlannedSetting alternative : alternatives) {
            writeObject(json, alternative);
        }
        json.endArray();
    }

    private void writeObject(JsonWriter json, PlannedSetting planned) throws IOException {
        if (planned == null) {
            json.nullValue();
            return;
        }
        json.beginObject();
        new SettingJson(axis).write(json, planned);
        json.endObject();
    }
}
