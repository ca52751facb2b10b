// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.MeanEffort;
import pitchstack.core.coverage.StopChange;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;

/**
 * What some teeth would cost, for other programs: the figures that would be, and what changes.
 *
 * @param now what is reached as it is
 * @param supposed what is supposed
 */
record SupposedJson(Mapped now, Supposed supposed) {
    /** Writes one object. */
    void write(JsonWriter json) throws IOException {
        json.beginObject();
        json.name("marks").beginArray();
        for (WearMark mark : supposed.marks()) {
            json.beginObject().name("stage").value(now.axis().stages().get(mark.stage()).name())
                    .name("row").value(Supposed.row(mark)).name("first").value(mark.range().teeth().first())
                    .name("last").value(mark.range().teeth().last())
                    .name("wear").value(mark.range().wear().name().toLowerCase(Locale.ROOT)).endObject();
        }
        json.endArray();
        CoverageJson.write(json, supposed.mapped());
        write(json, "lost", supposed.answer().change().lost());
        write(json, "newlyWornOnly", supposed.answer().change().wornOnly());
        json.name("targets");
        writeTargets(json);
        json.name("meanEffort");
        writeMean(json);
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

    private void writeTargets(JsonWriter json) throws IOException {
        if (supposed.stops().isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginObject();
        json.name("count").value(supposed.stops().size());
        json.name("reached").value(supposed.reachedNow());
        write(json, "lost", supposed.stops(StopChange::fails), now);
        write(json, "newlyOverWorn", supposed.stops(StopChange::turnsWorn), now);
        json.name("effortSeconds").jsonValue(Wording.seconds(supposed.effortMs(StopChange::now)));
        json.name("supposedEffortSeconds").jsonValue(Wording.seconds(supposed.effortMs(StopChange::supposed)));
        Json.strings(json, "unread", supposed.unread());
        json.endObject();
    }

    private void writeMean(JsonWriter json) throws IOException {
        if (supposed.answer().mean().isEmpty()) {
            json.nullValue();
            return;
        }
        MeanEffort mean = supposed.answer().mean().get();
        json.beginObject();
        json.name("step").value(now.axis().scale().decimal(mean.step()));
        json.name("positions").value(mean.cells());
        json.name("effortSeconds").jsonValue(Wording.seconds(Math.round(mean.nowMs())));
        json.name("supposedEffortSeconds").jsonValue(Wording.seconds(Math.round(mean.supposedMs())));
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
