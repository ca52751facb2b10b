// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.Wear;

/**
 * Colours of the drawing. All are mixed with the ground, so that they suit a light and a dark one.
 *
 * @param paper the ground
 * @param text words and strong lines
 * @param selected the system's colour of what is selected
 */
public record Palette(RGB paper, RGB text, RGB selected) {
    /** For paper: dark on white, whatever the window's colours are. */
    public static final Palette PAPER = new Palette(new RGB(255, 255, 255), new RGB(0, 0, 0), new RGB(0x60, 0x60, 0x60));

    private static final RGB STEEL = new RGB(0x4F, 0x7A, 0x9E);
    private static final RGB PRINT = new RGB(0xC0, 0x80, 0x1E);
    private static final RGB MARK = new RGB(0x00, 0x7A, 0x6C);
    private static final RGB WORN = new RGB(0x7A, 0x3B, 0x00);
    private static final RGB BARRED = new RGB(0xA8, 0x10, 0x2A);
    private static final int DARK_BELOW = 128;

    /** Those that suit the lists of a display, as its system colours them now. */
    public static Palette of(Display display) {
        return new Palette(rgb(display, SWT.COLOR_LIST_BACKGROUND), rgb(display, SWT.COLOR_LIST_FOREGROUND),
                rgb(display, SWT.COLOR_LIST_SELECTION));
    }

    private static RGB rgb(Display display, int colour) {
        return display.getSystemColor(colour).getRGB();
    }

    /** The ground of the drawing. */
    public Color ground() {
        return new Color(paper);
    }

    /** Text and strong lines. */
    public Color ink() {
        return new Color(text);
    }

    /** Text of less weight, still well readable. */
    public Color softInk() {
        return mix(text, 0.72);
    }

    /** Thin lines that only part one thing from another. */
    public Color hair() {
        return mix(text, 0.28);
    }

    /** The labels at the left and the ruler. */
    public Color panel() {
        return mix(text, 0.04);
    }

    /** The solid of a body. */
    public Color body() {
        return mix(text, 0.11);
    }

    /** The outline of a body. */
    public Color bodyLine() {
        return mix(text, 0.5);
    }

    /** A row, lighter where its teeth are not engaged. */
    public Color row(Source source, boolean engaged) {
        return engaged ? strong(hue(source)) : mix(hue(source), 0.42);
    }

    /** The outline of teeth. */
    public Color rowLine(Source source) {
        RGB hue = hue(source);
        return isDark() ? mix(hue, 1) : new Color(hue.red / 2, hue.green / 2, hue.blue / 2);
    }

    /** The ground of marked teeth. */
    public Color wearGround() {
        return mix(text, 0.06);
    }

    /** Hatching and words of marked teeth. */
    public Color wear(Wear wear) {
        RGB hue = wear == Wear.BARRED ? BARRED : WORN;
        return isDark() ? blend(hue, text, 0.65) : new Color(hue);
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
        return isDark() ? blend(MARK, text, 0.5) : new Color(MARK);
    }

    /** The outline of what is selected. */
    public Color selection() {
        return isDark() ? blend(selected, text, 0.45) : new Color(selected);
    }

    private boolean isDark() {
        return (paper.red * 3 + paper.green * 6 + paper.blue) / 10 < DARK_BELOW;
    }

    private static RGB hue(Source source) {
        return source == Source.BOUGHT ? STEEL : PRINT;
    }

    private Color strong(RGB hue) {
        return isDark() ? blend(hue, text, 0.15) : new Color(hue);
    }

    private Color mix(RGB hue, double part) {
        return blend(paper, hue, part);
    }

    private static Color blend(RGB from, RGB to, double part) {
        return new Color(blend(from.red, to.red, part), blend(from.green, to.green, part), blend(from.blue, to.blue, part));
    }

    private static int blend(int from, int to, double part) {
        return (int) Math.round(from + (to - from) * part);
    }
}
