// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.Wear;

/**
 * Colours and fonts of the drawing. Ground and text are the system's list colours; all others are mixed with the ground,
 * so that they suit a light and a dark one.
 */
public final class Look {
    private static final RGB STEEL = new RGB(0x4F, 0x7A, 0x9E);
    private static final RGB PRINT = new RGB(0xC0, 0x80, 0x1E);
    private static final RGB MARK = new RGB(0x00, 0x7A, 0x6C);
    private static final RGB WORN = new RGB(0x7A, 0x3B, 0x00);
    private static final RGB BARRED = new RGB(0xA8, 0x10, 0x2A);
    private static final int DARK_BELOW = 128;

    private final RGB ground;
    private final RGB ink;
    private final Color selection;
    private final Color selectionText;
    private final Font plain;
    private final Font small;
    private final Font bold;
    private final Font large;

    /** @param control the control drawn on; the fonts live as long as it does */
    public Look(Control control) {
        Display display = control.getDisplay();
        ground = display.getSystemColor(SWT.COLOR_LIST_BACKGROUND).getRGB();
        ink = display.getSystemColor(SWT.COLOR_LIST_FOREGROUND).getRGB();
        selection = display.getSystemColor(SWT.COLOR_LIST_SELECTION);
        selectionText = display.getSystemColor(SWT.COLOR_LIST_SELECTION_TEXT);
        FontDescriptor system = FontDescriptor.createFrom(control.getFont());
        plain = control.getFont();
        small = system.increaseHeight(-1).createFont(display);
        bold = system.setStyle(SWT.BOLD).createFont(display);
        large = system.increaseHeight(3).setStyle(SWT.BOLD).createFont(display);
        control.addDisposeListener(event -> {
            small.dispose();
            bold.dispose();
            large.dispose();
        });
    }

    /** The ground of the drawing. */
    public Color ground() {
        return new Color(ground);
    }

    /** Text and strong lines. */
    public Color ink() {
        return new Color(ink);
    }

    /** Text of less weight, still well readable. */
    public Color softInk() {
        return mix(ink, 0.72);
    }

    /** Thin lines that only part one thing from another. */
    public Color hair() {
        return mix(ink, 0.28);
    }

    /** The labels at the left and the ruler. */
    public Color panel() {
        return mix(ink, 0.04);
    }

    /** The solid of a body. */
    public Color body() {
        return mix(ink, 0.11);
    }

    /** The outline of a body. */
    public Color bodyLine() {
        return mix(ink, 0.5);
    }

    /** A row, lighter where its teeth are not engaged. */
    public Color row(Source source, boolean engaged) {
        return mix(hue(source), engaged ? 0.85 : 0.42);
    }

    /** The outline of teeth. */
    public Color rowLine(Source source) {
        RGB hue = hue(source);
        return isDark() ? mix(hue, 1) : new Color(hue.red / 2, hue.green / 2, hue.blue / 2);
    }

    /** The ground of marked teeth. */
    public Color wearGround() {
        return mix(ink, 0.06);
    }

    /** Hatching and words of marked teeth. */
    public Color wear(Wear wear) {
        RGB hue = wear == Wear.BARRED ? BARRED : WORN;
        return isDark() ? blend(hue, ink, 0.45) : new Color(hue);
    }

    /** A mark of findings, and its number. */
    public Color finding(Severity severity) {
        return switch (severity) {
            case ERROR -> wear(Wear.BARRED);
            case WARNING -> wear(Wear.WORN);
            case NOTE -> softInk();
        };
    }

    /** The carriage's pointer and the marks of an index. */
    public Color mark() {
        return isDark() ? blend(MARK, ink, 0.5) : new Color(MARK);
    }

    /** What is selected. */
    public Color selection() {
        return selection;
    }

    /** Text on {@link #selection}. */
    public Color selectionText() {
        return selectionText;
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

    private boolean isDark() {
        return (ground.red * 3 + ground.green * 6 + ground.blue) / 10 < DARK_BELOW;
    }

    private static RGB hue(Source source) {
        return source == Source.BOUGHT ? STEEL : PRINT;
    }

    private Color mix(RGB hue, double part) {
        return blend(ground, hue, part);
    }

    private static Color blend(RGB from, RGB to, double part) {
        return new Color(blend(from.red, to.red, part), blend(from.green, to.green, part), blend(from.blue, to.blue, part));
    }

    private static int blend(int from, int to, double part) {
        return (int) Math.round(from + (to - from) * part);
    }
}
