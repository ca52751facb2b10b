// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;

/**
 * What some teeth would cost, for other programs: the figures that would be, and what changes.
 *
 * @param now what is reached as it is
 * @param whatIf what is supposed
 */
record WhatIfJson(Mapped now, WhatIf whatIf) {
    /** Writes one object. */
    void write(JsonWriter json) throws IOException {
        json.beginObject();
        json.name("marks").beginArray();
        for (WearMark mark : whatIf.marks()) {
            json.beginObject().name("stage").value(now.axis().stages().get(mark.stage()).name())
                    .name("row").value(WhatIf.row(mark)).name("first").value(mark.range().teeth().first())
                    .name("last").value(mark.range().teeth().last())
                    .name("wear").value(mark.range().wear().name().toLowerCase(Locale.ROOT)).endObject();
        }
        json.endArray();
        CoverageJson.write(json, whatIf.supposed());
        write(json, "lost", whatIf.change().lost());
        write(json, "newlyWornOnly", whatIf.change().wornOnly());
        json.name("targets");
        if (whatIf.effort().isPresent()) {
            write(json, whatIf.effort().get());
        } else {
            json.nullValue();
        }
        json.endObject();
    }

    /** A part of the travel: its share, and in how many stretches. */
    private void write(JsonWriter json, String name, List<Changed> some) throws IOException {
        long travel = now.coverage().summary().travel();
        json.name(name).beginObject();
        json.name("share").value(travel == 0 ? 0 : (double) CoverageChange.size(some) / travel);
        json.name("stretches").value(some.size());
        json.endObject();
    }

    private void write(JsonWriter json, EffortChange effort) throws IOException {
        json.beginObject();
        json.name("count").value(effort.stops());
        json.name("reached").value(effort.reached());
        write(json, "lost", effort.lost(), now);
        write(json, "newlyOverWorn", effort.overWorn(), now);
        json.name("effortSeconds").jsonValue(Wording.seconds(effort.nowMs()));
        json.name("supposedEffortSeconds").jsonValue(Wording.seconds(effort.supposedMs()));
        json.name("unread").beginArray();
        for (String sentence : whatIf.unread()) {
            json.value(sentence);
        }
        json.endArray();
        json.endObject();
    }

    private static void write(JsonWriter json, String name, List<Stop> stops, Mapped now) throws IOException {
        json.name(name).beginArray();
        for (Stop stop : stops) {
            json.beginObject().name("name").value(stop.name()).name("target")
                    .value(now.axis().scale().decimal(stop.target())).endObject();
        }
        json.endArray();
    }
}
