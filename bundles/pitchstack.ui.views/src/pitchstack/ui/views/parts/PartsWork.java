// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchstack.analysis.part.PartSet;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.solid.Coupon;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.core.plan.Progress;
import pitchstack.export.part.CouponFormat;
import pitchstack.export.part.CouponPlan;
import pitchstack.export.part.PartFile;
import pitchstack.export.part.PartFormat;
import pitchstack.export.part.PartPicture;
import pitchstack.ui.views.export.ExportWork;
import pitchstack.ui.views.export.ExportWork.None;
import pitchstack.ui.views.export.ExportWork.Ready;
import pitchstack.ui.views.parts.WantedParts.Rows;

/** Makes parts, away from the interface thread. */
final class PartsWork {
    /** Of the preview; about what a dialog leaves for it. */
    private static final int HEIGHT_PX = ExportWork.PREVIEW_PX * 2 / 3;

    private PartsWork() {
    }

    /** Rows as a file, or why there is none. */
    static ExportWork ofRows(String title, Rows wanted, PartFormat format, Progress progress) {
        List<RowReading> readings = wanted.read();
        if (readings.isEmpty()) {
            return new None(PartSet.NONE_PRINTED);
        }
        Optional<String> refusal = PartSet.refusal(readings);
        if (refusal.isPresent()) {
            return new None(refusal.get());
        }
        List<RowReading.Ready> rows = PartSet.ready(readings);
        PartFile<RowSolid> part = PartFile.of(title, rows);
        Optional<byte[]> bytes = PartFile.bytes(part, format, progress);
        if (bytes.isEmpty()) {
            return new None("The parts were stopped while they were made.");
        }
        List<String> remarks = new ArrayList<>(PartFile.remarks(rows));
        if (format == PartFormat.STL) {
            remarks.add(part.stlCaution());
        }
        remarks.addAll(part.notes());
        String words = (rows.size() == 1 ? "One row" : rows.size() + " rows") + onBed(part.extent());
        return new Ready(bytes.get(), PartPicture.ofRows(part, ExportWork.PREVIEW_PX, HEIGHT_PX), words, words, remarks);
    }

    /** The coupon, or what to measure on it, as a file. */
    static ExportWork ofCoupon(CouponFormat format) {
        PartFile<Coupon> part = PartFile.coupon();
        String words = "Coupon" + onBed(part.extent());
        return new Ready(format.bytes(), PartPicture.ofCoupon(part, ExportWork.PREVIEW_PX, HEIGHT_PX), words, words,
                CouponPlan.instructions());
    }

    private static String onBed(Extent extent) {
        return String.format(Locale.ROOT, ", %.1f × %.1f × %.1f mm on the bed", extent.xMm(), extent.yMm(), extent.zMm());
    }
}
