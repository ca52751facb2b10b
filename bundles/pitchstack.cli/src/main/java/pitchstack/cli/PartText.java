// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.export.part.CouponPlan;
import pitchstack.export.part.PartFile;

/** What was made, in words. */
final class PartText {
    private final PrintWriter out;

    PartText(PrintWriter out) {
        this.out = out;
    }

    /** Tells of rows that were written. */
    void write(OutFile to, int bytes, PartFile<?> part, List<RowReading.Ready> rows) {
        Extent extent = part.extent();
        out.println(String.format(Locale.ROOT, "Written: %s, %s, %.1f × %.1f × %.1f mm on the bed.", to.path(), size(bytes),
                extent.xMm(), extent.yMm(), extent.zMm()));
        part.notes().forEach(note -> out.println("  " + note));
        if (to.ending().equals("stl")) {
            out.println("  " + part.stlCaution());
        }
        PartFile.remarks(rows).forEach(remark -> out.println("Note, " + remark));
    }

    /** Tells of the coupon, and what to measure on it. */
    void writeCoupon(OutFile to, int bytes) {
        out.println("Written: " + to.path() + ", " + size(bytes) + ".");
        CouponPlan.instructions().forEach(line -> out.println("  " + line));
        for (CouponPlan.Span span : CouponPlan.spans()) {
            out.println(String.format(Locale.ROOT, "  %s, posts 0 and %d: drawn span %.0f mm, over the posts %.0f mm,"
                    + " between them %.0f mm.", span.direction(), span.post(), span.drawnMm(), span.overMm(), span.betweenMm()));
        }
    }

    private static String size(int bytes) {
        return String.format(Locale.ROOT, "%.1f kB", bytes / 1000.0);
    }
}
