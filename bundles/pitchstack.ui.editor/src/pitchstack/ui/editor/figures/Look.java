// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Listener;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.Wear;

/** Colours and fonts of the drawing. The colours follow those of the system, also when they change. */
public final class Look {
    private final Font plain;
    private final Font small;
    private final Font bold;
    private final Font large;
    private Palette palette;

    /** @param control the control drawn on; the fonts live as long as it does */
    public Look(Control control) {
        Display display = control.getDisplay();
        palette = Palette.of(display);
        FontDescriptor system = FontDescriptor.createFrom(control.getFont());
        plain = control.getFont();
        small = system.increaseHeight(-1).createFont(display);
        bold = system.setStyle(SWT.BOLD).createFont(display);
        large = system.increaseHeight(3).setStyle(SWT.BOLD).createFont(display);
        Listener recoloured = event -> {
            palette = Palette.of(display);
            control.redraw();
        };
        display.addListener(SWT.Settings, recoloured);
        control.addDisposeListener(event -> {
            display.removeListener(SWT.Settings, recoloured);
            small.dispose();
            bold.dispose();
            large.dispose();
        });
    }

    /** Whether what is selected is marked; on paper nothing is. */
    boolean marksSelection() {
        return palette != Palette.PAPER;
    }

    /** Does something, such as painting for paper, with other colours than those of the window. */
    public void with(Palette other, Runnable painting) {
        Palette usual = palette;
        palette = other;
        try {
            painting.run();
        } finally {
            palette = usual;
        }
    }

    /** The ground of the drawing. */
    public Color ground() {
        return palette.ground();
    }

    /** Text and strong lines. */
    public Color ink() {
        return palette.ink();
    }

    /** Text of less weight, still well readable. */
    public Color softInk() {
        return palette.softInk();
    }

    /** Thin lines that only part one thing from another. */
    public Color hair() {
        return palette.hair();
    }

    /** The labels at the left and the ruler. */
    public Color panel() {
        return palette.panel();
    }

    /** The solid of a body. */
    public Color body() {
        return palette.body();
    }

    /** The outline of a body. */
    public Color bodyLine() {
        return palette.bodyLine();
    }

    /** A row, lighter where its teeth are not engaged. */
    public Color row(Source source, boolean engaged) {
        return palette.row(source, engaged);
    }

    /** The outline of teeth. */
    public Color rowLine(Source source) {
        return palette.rowLine(source);
    }

    /** The ground of marked teeth. */
    public Color wearGround() {
        return palette.wearGround();
    }

    /** Hatching and words of marked teeth. */
    public Color wear(Wear wear) {
        return palette.wear(wear);
    }

    /** A mark of findings, and its number. */
    public Color finding(Severity severity) {
        return palette.finding(severity);
    }

    /** The carriage's pointer and the marks of an index. */
    public Color mark() {
        return palette.mark();
    }

    /** The outline of what is selected. */
    public Color selection() {
        return palette.selection();
    }

    /** For most text. */
    public Font plain() {
        return plain;
    }

    /** For numbers along rows and rulers. */
    public Font small() {
        return small;
    }

    /** For names. */
    public Font bold() {
        return bold;
    }

    /** For an index in a label. */
    public Font large() {
        return large;
    }
}
