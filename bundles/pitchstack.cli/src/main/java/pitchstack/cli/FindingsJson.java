// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.Places;
import pitchstack.core.check.Finding;

/** Findings for other programs: an array, axis by axis, in the order of the checks. */
final class FindingsJson {
    private FindingsJson() {
    }

    /** The findings of these axes. */
    static String of(List<AxisAnalysis> analyses) {
        return Json.text(json -> {
            json.beginArray();
            for (AxisAnalysis analysis : analyses) {
                for (Finding finding : analysis.findings()) {
                    write(json, analysis, finding);
                }
            }
            json.endArray();
        });
    }

    private static void write(JsonWriter json, AxisAnalysis analysis, Finding finding) throws IOException {
        json.beginObject();
        json.name("id").value(finding.id());
        json.name("severity").value(FindingsText.word(finding.severity()));
        json.name("axis").value(analysis.spec().name());
        json.name("place").value(Places.words(analysis.axis(), finding.place()));
        json.name("value").value(finding.value());
        json.name("limit").value(finding.limit());
        json.name("sentence").value(finding.sentence());
        json.endObject();
    }
}
