// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.geometry.ToothForm;

/**
 * What a printer will not make as it is drawn. A wall takes two lines (common advice of makers of printers), a gap one, an
 * inner corner half a line.
 */
public final class PrintRemarks {
    /** What has to stay between tip and root when a seat is high or low by as much; common practice, no source. */
    private static final double LEAST_CLEARANCE_MM = 0.1;

    private PrintRemarks() {
    }

    /**
     * Looks at a tooth.
     *
     * @param lineMm the width of a printed line
     */
    public static List<Remark> of(ToothForm form, double lineMm) {
        List<Remark> remarks = new ArrayList<>();
        double land = form.flatTipMm();
        if (form.slotMm() > 0) {
            narrow(remarks, "leaf-too-thin", "Each leaf beside the slot", (land - form.slotMm()) / 2, lineMm,
                    "take a narrower slot, a larger pitch or a finer nozzle");
            narrow(remarks, "slot-too-narrow", "The slot", form.slotMm(), lineMm, "take a wider slot or a finer nozzle");
        } else {
            narrow(remarks, "tip-too-narrow", "The tip of a tooth", land, 2 * lineMm,
                    "take less tip relief, a larger pitch or a finer nozzle");
        }
        narrow(remarks, "root-gap-too-narrow", "The gap at the root", form.rootGapMm(), lineMm,
                "take a larger pitch or a finer nozzle");
        if (form.clearanceMm() <= LEAST_CLEARANCE_MM) {
            remarks.add(new Remark("tips-may-touch", "Between tip and root " + Millimetres.of(form.clearanceMm())
                    + " is left, and a printed row seats higher or lower by about as much, so that tips may carry instead of"
                    + " flanks; take a root relief of more than " + Millimetres.of(LEAST_CLEARANCE_MM) + "."));
        }
        return remarks;
    }

    private static void narrow(List<Remark> remarks, String id, String what, double width, double needed, String way) {
        if (width < needed) {
            remarks.add(new Remark(id, what + " is " + Millimetres.of(width) + " wide, less than the "
                    + Millimetres.of(needed) + " that the printed line needs; " + way + "."));
        }
    }
}
