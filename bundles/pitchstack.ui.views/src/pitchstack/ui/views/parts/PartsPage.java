// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.parts;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.URI;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import pitchstack.edit.Session;
import pitchstack.export.part.CouponFormat;
import pitchstack.export.part.PartFormat;
import pitchstack.ui.views.export.ExportPage;
import pitchstack.ui.views.export.ExportTask;
import pitchstack.ui.views.export.KeptChoices;
import pitchstack.ui.views.parts.WantedParts.Rows;
import pitchstack.ui.views.parts.WantedParts.TestCoupon;

/** Which parts to make. */
final class PartsPage extends ExportPage {
    private static final KeptChoices KEPT = new KeptChoices("pitchstack.ui.views.parts");
    private static final String FORMAT = "format";
    private static final String COUPON_FORMAT = "couponFormat";
    private static final List<String> FORMATS = List.of("3MF, for printers", "STL, without unit and names",
            "DXF, the side view for mills");
    private static final List<String> COUPON_FORMATS = List.of("3MF, for printers", "STL, without unit and names",
            "CSV, what to measure on it");

    private final List<WantedParts> all = WantedParts.of(positioner());
    private PartFormat format = KEPT.one(PartFormat.values(), FORMAT).orElse(PartFormat.THREE_MF);
    private CouponFormat couponFormat = KEPT.one(CouponFormat.values(), COUPON_FORMAT).orElse(CouponFormat.THREE_MF);
    private Combo which;
    private Combo formats;
    /** For which of the parts the formats stand in their list. */
    private WantedParts offered;

    PartsPage(Session session) {
        super("Parts", session, "-parts");
    }

    @Override
    protected void fill(Composite fields) {
        which = combo(fields, "&Parts", all.stream().map(WantedParts::words).toList(), 0);
        offered = all.get(0);
        formats = combo(fields, "F&ormat", FORMATS, format.ordinal());
    }

    @Override
    protected ExportTask task() {
        WantedParts wanted = all.get(which.getSelectionIndex());
        takeUp(wanted);
        String title = title();
        if (wanted instanceof Rows rows) {
            PartFormat chosen = format;
            return new ExportTask(chosen.ending(), progress -> PartsWork.ofRows(title, rows, chosen, progress));
        }
        CouponFormat chosen = couponFormat;
        return new ExportTask(chosen.ending(), progress -> PartsWork.ofCoupon(chosen));
    }

    /** Reads the format, or offers those of other parts and keeps what was chosen of them. */
    private void takeUp(WantedParts wanted) {
        boolean coupon = wanted instanceof TestCoupon;
        if (coupon != offered instanceof TestCoupon) {
            formats.setItems((coupon ? COUPON_FORMATS : FORMATS).toArray(String[]::new));
            formats.select(coupon ? couponFormat.ordinal() : format.ordinal());
        } else if (coupon) {
            couponFormat = CouponFormat.values()[formats.getSelectionIndex()];
        } else {
            format = PartFormat.values()[formats.getSelectionIndex()];
        }
        offered = wanted;
    }

    /** The title of the device, or the name of its file where it has none. */
    private String title() {
        URI file = session().document().getURI();
        return Stream.of(positioner().getTitle(), file == null ? null : URI.decode(file.lastSegment()))
                .filter(text -> text != null && !text.isBlank()).findFirst().orElse("Parts");
    }

    @Override
    protected String hint() {
        return "Finish writes the parts as they lie on the bed here, all with their teeth along x.";
    }

    @Override
    protected void keep() {
        KEPT.keep(Map.of(FORMAT, format.name(), COUPON_FORMAT, couponFormat.name()));
    }
}
