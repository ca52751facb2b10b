// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.core.geometry.ToothForm;

/**
 * A slot in a printed tooth leaves two leaves at the tip; each of them takes a printed line, and so does the slot. The tip
 * is counted without its roundings.
 */
public final class SlotNotPrintable implements Check {
    private static final double MM_PER_METRE = 1000;
    /** Two leaves and the slot. */
    private static final int LINES = 3;

    @Override
    public List<Finding> apply(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (int j = 0; j < subject.axis().stages().size(); j++) {
            ToothForm form = subject.forms().get(j);
            if (form != null && form.slotMm() > 0 && subject.lineWidthM() > 0) {
                look(findings, subject, j, form, subject.lineWidthM() * MM_PER_METRE);
            }
        }
        return findings;
    }

    private static void look(List<Finding> findings, Subject subject, int j, ToothForm form, double lineMm) {
        double tip = form.flatTipMm();
        double leaf = (tip - form.slotMm()) / 2;
        String of = " of stage " + subject.axis().stages().get(j).title(j);
        String needed = ", less than the " + mm(lineMm) + " of a printed line; " + wayOut(tip, lineMm);
        if (leaf <= 0) {
            findings.add(finding("leaf-too-thin", j, form.slotMm(), tip, "The slot" + of + " is " + mm(form.slotMm())
                    + " wide and leaves nothing of the tip, which is " + mm(tip) + " wide; " + wayOut(tip, lineMm)));
        } else if (leaf < lineMm) {
            findings.add(finding("leaf-too-thin", j, leaf, lineMm, "Each leaf beside the slot" + of + " is " + mm(leaf)
                    + " wide at the tip" + needed));
        }
        if (form.slotMm() < lineMm) {
            findings.add(finding("slot-too-narrow", j, form.slotMm(), lineMm, "The slot" + of + " is " + mm(form.slotMm())
                    + " wide" + needed));
        }
    }

    private static String wayOut(double tipMm, double lineMm) {
        double finest = tipMm / LINES;
        return lineMm <= finest ? "a slot from " + mm(lineMm) + " to " + mm(tipMm - 2 * lineMm) + " can be printed."
                : "leave the slot out, or print with lines of " + mm(finest) + " or less, or take a larger pitch.";
    }

    private static Finding finding(String id, int j, double foundMm, double limitMm, String sentence) {
        return new Finding(id, Severity.WARNING, Place.stage(j), mm(foundMm), mm(limitMm), sentence);
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.3f mm", mm);
    }
}
