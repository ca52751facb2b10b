// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import pitchstack.core.coverage.RowSeatings;

/**
 * Where a list wears the rows, for other programs.
 *
 * @param log what is to be told
 */
record WearJson(WearLog log) {
    /** The counts, on one line. */
    String text(List<String> unread) {
        return Json.text(json -> {
            json.beginObject();
            json.name("reached").value(log.reached());
            json.name("leftOut").value(log.leftOut());
            json.name("rows").beginArray();
            for (RowSeatings row : log.seatings().rows()) {
                write(json, row);
            }
            json.endArray();
            Json.strings(json, "unread", unread);
            json.endObject();
        });
    }

    private void write(JsonWriter json, RowSeatings row) throws IOException {
        json.beginObject();
        json.name("stage").value(log.axis().stages().get(row.stage()).name());
        json.name("row").value(row.row().word());
        json.name("most").value(row.most());
        json.name("seatings").beginArray();
        for (int count : row.counts()) {
            json.value(count);
        }
        json.endArray();
        json.endObject();
    }
}
