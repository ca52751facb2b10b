// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.Locale;
import pitchstack.analysis.accuracy.AccuracyReading;
import pitchstack.analysis.accuracy.BudgetLine;
import pitchstack.analysis.accuracy.SettingFigures;
import pitchstack.core.accuracy.total.Cause;

/**
 * A budget for other programs. Uncertainties are numbers in micrometres, on a rotary axis in arc seconds; infinite degrees
 * of freedom are null.
 *
 * @param reading what was read
 * @param chosen how the setting was chosen
 * @param figures of the setting
 */
record BudgetJson(AccuracyReading reading, BudgetOptions.Chosen chosen, SettingFigures figures) {
    /** The budget on one line. */
    String text() {
        return Json.text(json -> {
            json.beginObject();
            MicroJson micro = new MicroJson(reading.spec().scale());
            json.name("unit").value(micro.unit());
            json.name("setting").beginArray();
            for (int index : figures.setting().toArray()) {
                json.value(index);
            }
            json.endArray();
            json.name("position").value(reading.spec().scale().decimal(figures.position()));
            json.name("chosen").value(chosen.how());
            micro.write(json, "combined", figures.combinedM());
            micro.write(json, "repeating", figures.result().repeating());
            micro.write(json, "varying", figures.result().varying());
            MicroJson.plain(json, "degreesOfFreedom", figures.result().degreesOfFreedom());
            MicroJson.plain(json, "confidence", figures.result().confidence());
            MicroJson.plain(json, "coverageFactor", figures.result().factor());
            micro.write(json, "expanded", figures.expandedM());
            json.name("contributions").beginArray();
            for (BudgetLine line : figures.lines()) {
                write(json, micro, line);
            }
            json.endArray();
            Json.strings(json, "assumptions", reading.assumptions());
            json.endObject();
        });
    }

    private static void write(JsonWriter json, MicroJson micro, BudgetLine line) throws IOException {
        json.beginObject();
        json.name("name").value(line.name());
        json.name("cause").value(line.cause().map(cause -> cause.name().toLowerCase(Locale.ROOT)).orElse(null));
        json.name("type").value(line.type());
        json.name("distribution").value(line.input().distribution().name().toLowerCase(Locale.ROOT));
        micro.write(json, "uncertainty", line.uncertaintyM());
        MicroJson.plain(json, "inputUncertainty", line.input().standardUncertainty());
        MicroJson.plain(json, "sensitivity", line.input().sensitivity());
        json.name("sensitivityPer").value(line.cause().map(Cause::per).map(per -> per.name().toLowerCase(Locale.ROOT))
                .orElse(null));
        MicroJson.plain(json, "degreesOfFreedom", line.input().degreesOfFreedom());
        MicroJson.plain(json, "share", line.share());
        json.name("repeats").value(line.repeats());
        json.name("model").value(line.model());
        json.endObject();
    }
}
