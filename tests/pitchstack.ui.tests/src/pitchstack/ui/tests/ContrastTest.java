// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.core.runtime.Platform;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.Wear;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.ui.editor.figures.Palette;
import pitchstack.ui.tests.views.Hands;
import pitchstack.ui.views.coverage.Ink;
import pitchstack.ui.views.coverage.strip.StripPixels.Paint;

/**
 * Contrast of what is written and drawn, as the Web Content Accessibility Guidelines 2.1 define it: at least 4.5 to 1 for
 * text (1.4.3, level AA) and 3 to 1 for lines and areas that one has to see (1.4.11). Relative luminance as defined there.
 */
class ContrastTest {
    private static final double TEXT = 4.5;
    private static final double GRAPHICS = 3;
    private static final Pattern PAINTED = Pattern.compile("(?:fill|stroke)=\"([^\"]*)\"");

    private final List<String> tooLow = new ArrayList<>();

    @AfterEach
    void back() {
        new Hands().colours(Theme.LIGHT);
    }

    private void check(String what, double least, Color one, Color... others) {
        for (Color other : others) {
            double contrast = contrast(one.getRGB(), other.getRGB());
            if (contrast < least) {
                tooLow.add(String.format("%s: %.2f of %s on %s", what, contrast, one.getRGB(), other.getRGB()));
            }
        }
    }

    private static double contrast(RGB one, RGB other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(RGB colour) {
        return 0.2126 * linear(colour.red) + 0.7152 * linear(colour.green) + 0.0722 * linear(colour.blue);
    }

    private static double linear(int part) {
        double share = part / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** From the definition: black on white is 21 to 1; #767676 on white is known as the lightest grey above 4.5. */
    @Test
    void measuresAsTheGuidelinesDo() {
        assertEquals(21, contrast(new RGB(0, 0, 0), new RGB(255, 255, 255)), 1e-9);
        assertEquals(4.54, contrast(new RGB(0x76, 0x76, 0x76), new RGB(255, 255, 255)), 0.005);
    }

    @ParameterizedTest
    @EnumSource(value = Theme.class, names = {"LIGHT", "DARK"})
    void canBeReadInTheDrawing(Theme theme) {
        new Hands().colours(theme);
        check(Palette.of(Display.getCurrent()));
        assertEquals(List.of(), tooLow);
    }

    @Test
    void canBeReadOnPaper() {
        check(Palette.PAPER);
        assertEquals(List.of(), tooLow);
    }

    private void check(Palette look) {
        check("text", TEXT, look.ink(), look.ground(), look.panel(), look.body());
        check("text of less weight", TEXT, look.softInk(), look.ground(), look.panel());
        check("position of the carriage", TEXT, look.ground(), look.mark());
        for (Wear wear : List.of(Wear.WORN, Wear.BARRED)) {
            check("words of " + wear, TEXT, look.wear(wear), look.ground(), look.panel(), look.body(), look.wearGround());
        }
        for (Severity severity : Severity.values()) {
            check("sign of " + severity, TEXT, look.ground(), look.finding(severity));
            check("sign of " + severity, GRAPHICS, look.finding(severity), look.panel(), look.ground());
        }
        for (Source source : Source.values()) {
            check("teeth of " + source, GRAPHICS, look.rowLine(source), look.ground());
            check("row of " + source, GRAPHICS, look.row(source, true), look.ground());
        }
        check("marks", GRAPHICS, look.mark(), look.ground(), look.panel());
        check("outline of a body", GRAPHICS, look.bodyLine(), look.ground());
        check("outline of what is selected", GRAPHICS, look.selection(), look.ground(), look.panel());
    }

    @ParameterizedTest
    @EnumSource(value = Theme.class, names = {"LIGHT", "DARK"})
    void canBeReadOnStrips(Theme theme) {
        new Hands().colours(theme);
        Ink ink = new Ink(Display.getCurrent());
        check("text", TEXT, ink.text(), ink.ground());
        check("text of less weight", TEXT, ink.softText(), ink.ground());
        check("carriage", GRAPHICS, ink.mark(), ink.ground());
        for (Paint paint : List.of(Paint.CLEAN, Paint.HATCH, Paint.NOT, Paint.LOST)) {
            check(paint.name(), GRAPHICS, new Color(ink.colour(paint)), ink.ground());
        }
        check("hatch", GRAPHICS, new Color(ink.colour(Paint.HATCH)), new Color(ink.colour(Paint.WORN)));
        assertEquals(List.of(), tooLow);
    }

    /** Every colour of every icon, wholly opaque, on the grounds of bars and of lists: one icon serves both themes. */
    @ParameterizedTest
    @EnumSource(value = Theme.class, names = {"LIGHT", "DARK"})
    void canBeSeenInIcons(Theme theme) throws IOException {
        new Hands().colours(theme);
        Color bar = Display.getCurrent().getSystemColor(SWT.COLOR_WIDGET_BACKGROUND);
        Color list = Display.getCurrent().getSystemColor(SWT.COLOR_LIST_BACKGROUND);
        int seen = 0;
        for (String bundle : List.of("pitchstack.ui.editor", "pitchstack.ui.views")) {
            for (URL icon : Collections.list(Platform.getBundle(bundle).findEntries("/icons", "*.svg", false))) {
                String text = text(icon);
                assertFalse(text.contains("opacity"), icon + " shows through");
                Matcher colour = PAINTED.matcher(text);
                while (colour.find()) {
                    if (!colour.group(1).equals("none")) {
                        check(icon.getPath(), GRAPHICS, new Color(rgb(colour.group(1))), bar, list);
                        seen++;
                    }
                }
            }
        }
        assertTrue(seen > 0, "there are icons");
        assertEquals(List.of(), tooLow);
    }

    private static String text(URL icon) throws IOException {
        try (InputStream in = icon.openStream()) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** A colour of six digits; any other way of writing one is refused. */
    private static RGB rgb(String colour) {
        assertTrue(colour.matches("#[0-9a-f]{6}"), colour);
        int value = Integer.parseInt(colour.substring(1), 16);
        return new RGB(value >> 16, value >> 8 & 255, value & 255);
    }
}
