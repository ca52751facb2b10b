// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.Optional;
import pitchstack.analysis.accuracy.RunEvaluation;
import pitchstack.analysis.accuracy.Si;
import pitchstack.core.accuracy.evaluation.OneWayFigures;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.Spread;
import pitchstack.core.accuracy.evaluation.TargetFigures;
import pitchstack.core.accuracy.evaluation.TwoWayFigures;
import pitchstack.core.accuracy.evaluation.ZeroReturns;
import pitchstack.core.units.Scale;

/**
 * The figures of ISO 230-2 for other programs: numbers in micrometres, on a rotary axis in arc seconds. What there is not is
 * null.
 *
 * @param evaluation the figures
 * @param scale of the axis
 */
record EvaluateJson(RunEvaluation evaluation, Scale scale) {
    /** The figures on one line. */
    String text() {
        return Json.text(json -> {
            json.beginObject();
            json.name("unit").value(micro().unit());
            json.name("targets").beginArray();
            if (evaluation.positioning().isPresent()) {
                for (TargetFigures target : evaluation.positioning().get().targets()) {
                    write(json, target);
                }
            }
            json.endArray();
            json.name("up");
            writeOneWay(json, evaluation.positioning().flatMap(Positioning::up));
            json.name("down");
            writeOneWay(json, evaluation.positioning().flatMap(Positioning::down));
            json.name("both");
            writeBoth(json, evaluation.positioning().flatMap(Positioning::both));
            json.name("returns");
            writeReturns(json);
            Json.strings(json, "remarks", evaluation.remarks());
            json.endObject();
        });
    }

    private MicroJson micro() {
        return new MicroJson(scale);
    }

    private void write(JsonWriter json, TargetFigures target) throws IOException {
        json.beginObject();
        json.name("position").value(scale.decimal(scale.wrap(Si.counts(target.targetM(), scale))));
        micro().write(json, "meanUp", target.up().map(Spread::meanM).orElse(Double.NaN));
        micro().write(json, "deviationUp", target.up().map(Spread::deviationM).orElse(Double.NaN));
        micro().write(json, "meanDown", target.down().map(Spread::meanM).orElse(Double.NaN));
        micro().write(json, "deviationDown", target.down().map(Spread::deviationM).orElse(Double.NaN));
        micro().write(json, "reversal", target.isTwoWay() ? target.reversalM() : Double.NaN);
        micro().write(json, "repeatability", target.isTwoWay() ? target.repeatabilityM() : Double.NaN);
        json.endObject();
    }

    private void writeOneWay(JsonWriter json, Optional<OneWayFigures> figures) throws IOException {
        if (figures.isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginObject();
        micro().write(json, "R", figures.get().repeatabilityM());
        micro().write(json, "E", figures.get().errorM());
        micro().write(json, "A", figures.get().accuracyM());
        json.endObject();
    }

    private void writeBoth(JsonWriter json, Optional<TwoWayFigures> figures) throws IOException {
        if (figures.isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginObject();
        micro().write(json, "B", figures.get().reversalM());
        micro().write(json, "meanB", figures.get().meanReversalM());
        micro().write(json, "R", figures.get().repeatabilityM());
        micro().write(json, "E", figures.get().errorM());
        micro().write(json, "M", figures.get().meanErrorM());
        micro().write(json, "A", figures.get().accuracyM());
        json.endObject();
    }

    private void writeReturns(JsonWriter json) throws IOException {
        if (evaluation.returns().isEmpty()) {
            json.nullValue();
            return;
        }
        ZeroReturns figures = evaluation.returns().get().figures();
        json.beginObject();
        json.name("setting").beginArray();
        for (int index : evaluation.returns().get().setting().toArray()) {
            json.value(index);
        }
        json.endArray();
        json.name("count").value(figures.count());
        micro().write(json, "mean", figures.meanM());
        micro().write(json, "deviation", figures.deviationM());
        micro().write(json, "nextWithin", figures.nextWithinM());
        json.name("drifts").value(figures.drifts());
        json.endObject();
    }
}
