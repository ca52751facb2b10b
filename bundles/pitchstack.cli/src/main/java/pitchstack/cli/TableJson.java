// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.OptionalLong;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.export.PlanCsv;

/** A planned list for other programs; what does not apply is null, so that every answer has the same members. */
final class TableJson {
    private final AxisSpec axis;
    private final SequenceRequest request;

    /**
     * @param axis the axis that was planned on
     * @param request what was asked
     */
    TableJson(AxisSpec axis, SequenceRequest request) {
        this.axis = axis;
        this.request = request;
    }

    /** A plan, on one line. */
    String of(Planned planned, List<String> unread) {
        return Json.text(json -> {
            json.beginObject();
            json.name("reached").value(planned.legs().size() - planned.leftOut());
            json.name("leftOut").value(planned.leftOut());
            json.name("unit").value(axis.scale().turn() == 0 ? "mm" : "deg");
            json.name("effortSeconds").jsonValue(Wording.seconds(planned.effortMs()));
            write(json, "savedSeconds", planned.savedMs());
            write(json, "leastSeconds", planned.leastMs());
            json.name("stops").beginArray();
            for (Leg leg : planned.legs()) {
                write(json, leg);
            }
            json.endArray();
            Json.strings(json, "unread", unread);
            json.endObject();
        });
    }

    private static void write(JsonWriter json, String name, OptionalLong milliseconds) throws IOException {
        json.name(name);
        if (milliseconds.isPresent()) {
            json.jsonValue(Wording.seconds(milliseconds.getAsLong()));
        } else {
            json.nullValue();
        }
    }

    private void write(JsonWriter json, Leg leg) throws IOException {
        Stop stop = request.stops().get(leg.stop());
        json.beginObject();
        json.name("stop").value(leg.stop() + 1);
        json.name("name").value(stop.name());
        json.name("target").value(axis.scale().decimal(stop.target()));
        json.name("tolerance").value(axis.scale().decimal(stop.tolerance()));
        if (leg.move().isPresent()) {
            new SettingJson(axis).write(json, leg.move().get());
            json.name("reason").nullValue();
        } else {
            for (String absent : SettingJson.MEMBERS) {
                json.name(absent).nullValue();
            }
            json.name("reason").value(PlanCsv.why(axis, stop, leg));
        }
        json.endObject();
    }
}
