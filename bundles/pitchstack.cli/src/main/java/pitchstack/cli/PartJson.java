// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.core.geometry.solid.Remark;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.export.Decimals;
import pitchstack.export.part.BinaryStl;
import pitchstack.export.part.CouponPlan;
import pitchstack.export.part.PartFile;

/** What was made, for other programs; all lengths are millimetres. */
final class PartJson {
    private static final int LENGTH_PLACES = 6;
    private static final int FACTOR_PLACES = 9;

    private PartJson() {
    }

    /** Rows that were written. */
    static String of(OutFile to, int bytes, PartFile<?> part, List<RowReading.Ready> rows) {
        return Json.text(json -> {
            json.beginObject();
            written(json, to, bytes, part);
            json.name("rows").beginArray();
            for (int i = 0; i < rows.size(); i++) {
                row(json, rows.get(i), part.plate().get(i).yMm());
            }
            json.endArray().endObject();
        });
    }

    /** The coupon, and what to measure on it. */
    static String ofCoupon(OutFile to, int bytes, PartFile<?> part) {
        return Json.text(json -> {
            json.beginObject();
            written(json, to, bytes, part);
            json.name("spans").beginArray();
            for (CouponPlan.Span span : CouponPlan.spans()) {
                json.beginObject().name("direction").value(span.direction()).name("posts").beginArray().value(0)
                        .value(span.post()).endArray();
                number(json, "drawn", span.drawnMm(), LENGTH_PLACES);
                number(json, "over", span.overMm(), LENGTH_PLACES);
                number(json, "between", span.betweenMm(), LENGTH_PLACES);
                json.endObject();
            }
            json.endArray().endObject();
        });
    }

    private static void written(JsonWriter json, OutFile to, int bytes, PartFile<?> part) throws IOException {
        json.name("written").beginObject().name("file").value(to.path().toString()).name("format").value(to.ending())
                .name("bytes").value(bytes).name("unit").value("mm");
        Extent extent = part.extent();
        json.name("size").beginArray();
        for (double length : List.of(extent.xMm(), extent.yMm(), extent.zMm())) {
            json.jsonValue(Decimals.of(length, LENGTH_PLACES));
        }
        json.endArray();
        if (to.ending().equals("stl")) {
            number(json, "resolution", BinaryStl.stepMm(extent.xMm()), FACTOR_PLACES);
        }
        json.endObject();
    }

    private static void row(JsonWriter json, RowReading.Ready row, double yMm) throws IOException {
        RowShape shape = row.part().shape();
        json.beginObject().name("stage").value(row.stage().getName()).name("row").value(row.side().word())
                .name("name").value(row.part().name()).name("reference").value(row.reference())
                .name("teeth").value(shape.teeth())
                .name("pitch").value(new LinearScale(LengthUnit.MM).decimal(shape.pitchFm()));
        number(json, "factorX", row.scale().factorX(), FACTOR_PLACES);
        number(json, "factorY", row.scale().factorY(), FACTOR_PLACES);
        json.name("measuredX").value(row.scale().measuredX()).name("measuredY").value(row.scale().measuredY());
        number(json, "y", yMm, LENGTH_PLACES);
        number(json, "volume", row.solid().volumeMm3(), LENGTH_PLACES);
        json.name("remarks").beginArray();
        for (Remark remark : row.remarks()) {
            json.beginObject().name("id").value(remark.id()).name("sentence").value(remark.sentence()).endObject();
        }
        json.endArray().endObject();
    }

    private static void number(JsonWriter json, String name, double value, int places) throws IOException {
        json.name(name).jsonValue(Decimals.of(value, places));
    }
}
