// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pitchstack.analysis.accuracy.Corrections;
import pitchstack.analysis.accuracy.CorrectionGain;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.core.accuracy.fit.Estimate;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.accuracy.fit.Residual;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * A fit for other programs. Corrections are in ppm; datum, reversal, residuals and errors in micrometres, on a rotary axis in
 * arc seconds. What there is not is null.
 *
 * @param axis of the run
 * @param study what the run says
 * @param gain what the fit buys on the targets, none without a fit
 * @param changes of the stages, none without a fit
 */
record FitJson(AxisSpec axis, RunStudy study, Optional<CorrectionGain> gain, List<Corrections.Change> changes) {
    private static final double PPM = 1e-6;

    /**
     * The fit on one line.
     *
     * @param backup where the file before is kept, if the corrections were written
     */
    String text(Optional<String> backup) {
        return Json.text(json -> {
            json.beginObject();
            json.name("fitted").value(study.fit().fit().isPresent());
            json.name("unit").value(micro().unit());
            json.name("run").value(study.run().name());
            json.name("readings").value(study.run().readings().size());
            json.name("whyNot").value(study.fit().whyNot().orElse(null));
            json.name("proposals").beginArray();
            for (Setting setting : study.fit().proposals()) {
                write(json, setting);
            }
            json.endArray();
            write(json, study.fit().fit());
            json.name("targets");
            writeGain(json);
            Json.strings(json, "assumptions", study.run().assumptions());
            json.name("written").value(backup.isPresent());
            json.name("backup").value(backup.orElse(null));
            json.endObject();
        });
    }

    private MicroJson micro() {
        return new MicroJson(axis.scale());
    }

    private static void write(JsonWriter json, Setting setting) throws IOException {
        json.beginArray();
        for (int index : setting.toArray()) {
            json.value(index);
        }
        json.endArray();
    }

    private void write(JsonWriter json, Optional<PitchFit> fit) throws IOException {
        json.name("stages").beginArray();
        for (Corrections.Change change : changes) {
            Estimate correction = fit.orElseThrow().correction(change.stage());
            json.beginObject().name("stage").value(axis.stages().get(change.stage()).name());
            MicroJson.plain(json, "correctionPpm", correction.value() / PPM);
            MicroJson.plain(json, "uncertaintyPpm", correction.uncertainty() / PPM);
            MicroJson.plain(json, "degreesOfFreedom", correction.degreesOfFreedom());
            MicroJson.plain(json, "withinPpm", correction.within() / PPM);
            MicroJson.plain(json, "beforePpm", change.fromPpm());
            json.endObject();
        }
        json.endArray();
        json.name("correlations").beginArray();
        for (int j = 0; j < changes.size(); j++) {
            json.beginArray();
            for (int k = 0; k < changes.size(); k++) {
                json.value(j == k ? 1 : fit.orElseThrow().correlation(j, k));
            }
            json.endArray();
        }
        json.endArray();
        writeEstimate(json, "datum", fit.map(PitchFit::datumM));
        writeEstimate(json, "reversal", fit.flatMap(PitchFit::reversalM));
        MicroJson.plain(json, "scatterRatio", fit.map(PitchFit::scatterRatio).orElse(Double.NaN));
        writeResiduals(json, fit);
        writeMaps(json);
    }

    private void writeEstimate(JsonWriter json, String name, Optional<Estimate> estimate) throws IOException {
        json.name(name);
        if (estimate.isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginObject();
        micro().write(json, "value", estimate.get().value());
        micro().write(json, "uncertainty", estimate.get().uncertainty());
        MicroJson.plain(json, "degreesOfFreedom", estimate.get().degreesOfFreedom());
        json.endObject();
    }

    private void writeResiduals(JsonWriter json, Optional<PitchFit> fit) throws IOException {
        json.name("residuals").beginArray();
        for (Residual residual : fit.map(PitchFit::residuals).orElse(List.of())) {
            json.beginObject().name("setting");
            write(json, residual.reading().setting());
            json.name("direction").value(residual.reading().direction().name().toLowerCase(Locale.ROOT));
            micro().write(json, "residual", residual.residualM());
            MicroJson.plain(json, "studentized", residual.studentized());
            json.name("outlier").value(residual.outlier());
            json.endObject();
        }
        json.endArray();
    }

    private void writeMaps(JsonWriter json) throws IOException {
        json.name("indexErrors").beginArray();
        for (IndexErrorMap map : study.fit().maps()) {
            for (Map.Entry<Integer, Estimate> error : map.byIndex().entrySet()) {
                json.beginObject().name("stage").value(axis.stages().get(map.stage()).name());
                json.name("index").value(error.getKey());
                micro().write(json, "error", error.getValue().value());
                micro().write(json, "uncertainty", error.getValue().uncertainty());
                json.name("significant").value(error.getValue().isSignificant());
                json.endObject();
            }
        }
        json.endArray();
    }

    private void writeGain(JsonWriter json) throws IOException {
        if (gain.isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginArray();
        for (CorrectionGain.Gained one : gain.get().stops()) {
            json.beginObject().name("name").value(one.stop().name());
            json.name("position").value(axis.scale().decimal(one.stop().target()));
            json.name("offBefore").value(one.trulyOff().isEmpty() ? null : axis.scale().decimal(one.trulyOff().getAsLong()));
            json.name("offNow").value(one.after().map(move -> axis.scale().decimal(move.error())).orElse(null));
            json.endObject();
        }
        json.endArray();
    }
}
