// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.PaintObjectEvent;
import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.GlyphMetrics;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import pitchstack.ui.views.guide.GuideText.Indent;
import pitchstack.ui.views.guide.GuideText.Look;
import pitchstack.ui.views.guide.GuideText.Span;
import pitchstack.ui.views.guide.GuideText.Table;
import pitchstack.ui.views.Accessibles;

/** Paints a page of the guide. */
final class GuideCanvas {
    private static final int MARGIN = 12;
    private static final int INDENT = 18;

    private final StyledText text;
    private final LocalResourceManager resources;
    private final Map<String, Image> pictures = new HashMap<>();

    GuideCanvas(Composite parent) {
        text = new StyledText(parent, SWT.MULTI | SWT.WRAP | SWT.READ_ONLY | SWT.V_SCROLL);
        Accessibles.name(text, "User guide");
        text.setMargins(MARGIN, MARGIN, MARGIN, MARGIN);
        text.setLineSpacing(2);
        resources = new LocalResourceManager(JFaceResources.getResources(), text);
        text.addPaintObjectListener(this::paintPicture);
        text.addListener(SWT.Resize, e -> fitPictures());
        text.addListener(SWT.Dispose, e -> forgetPictures());
    }

    StyledText widget() {
        return text;
    }

    /**
     * Shows a page.
     *
     * @param page the page
     * @param load makes an image of a picture's file, or {@code null}
     */
    void show(GuideText page, Function<String, Image> load) {
        forgetPictures();
        text.setText(page.text());
        for (Span span : page.spans()) {
            if (span.look() == Look.PICTURE) {
                pictures.computeIfAbsent(span.goal(), load);
            }
            text.setStyleRange(style(span));
        }
        for (Indent part : page.lines()) {
            int first = text.getLineAtOffset(part.start());
            int count = lines(part.start(), part.end());
            text.setLineIndent(first, count, part.depth() * INDENT);
            text.setLineWrapIndent(first, count, (part.depth() + 1) * INDENT);
        }
        page.tables().forEach(this::align);
        text.setCaretOffset(0);
        text.setTopPixel(0);
    }

    /** A page is shown before the view has a size, and stays when it gets another one. */
    private void fitPictures() {
        for (StyleRange style : text.getStyleRanges()) {
            if (style.metrics != null) {
                style.metrics = metrics((String) style.data);
                text.setStyleRange(style);
            }
        }
    }

    private int lines(int start, int end) {
        return text.getLineAtOffset(Math.max(start, end - 1)) - text.getLineAtOffset(start) + 1;
    }

    /** Gives every column but the last the width of its widest cell; the last one wraps under itself. */
    private void align(Table table) {
        int first = text.getLineAtOffset(table.start());
        int count = lines(table.start(), table.end());
        int[] widths = new int[0];
        GC gc = new GC(text);
        for (int line = first; line < first + count; line++) {
            String[] cells = text.getLine(line).split("\t");
            widths = Arrays.copyOf(widths, Math.max(widths.length, cells.length - 1));
            for (int column = 0; column < cells.length - 1; column++) {
                widths[column] = Math.max(widths[column], gc.textExtent(cells[column]).x + INDENT);
            }
        }
        gc.dispose();
        Arrays.parallelPrefix(widths, Integer::sum);
        text.setLineTabStops(first, count, widths);
        text.setLineWrapIndent(first, count, widths.length == 0 ? 0 : widths[widths.length - 1]);
    }

    private StyleRange style(Span span) {
        StyleRange style = new StyleRange();
        style.start = span.start();
        style.length = span.end() - span.start();
        switch (span.look()) {
            case TITLE -> style.font = font(1.7);
            case HEADING -> style.font = font(1.25);
            case STRONG -> style.fontStyle = SWT.BOLD;
            case EMPHASIS -> style.fontStyle = SWT.ITALIC;
            case CODE -> style.font = JFaceResources.getTextFont();
            case LINK -> {
                style.underline = true;
                style.underlineStyle = SWT.UNDERLINE_LINK;
            }
            case PICTURE -> {
                style.metrics = metrics(span.goal());
                style.data = span.goal();
            }
        }
        return style;
    }

    private Font font(double factor) {
        FontDescriptor normal = FontDescriptor.createFrom(text.getFont());
        int height = (int) Math.round(normal.getFontData()[0].getHeight() * factor);
        return resources.create(normal.setHeight(height).setStyle(SWT.BOLD));
    }

    /** As large as the picture is, or as wide as the page; of no size where there is no picture. */
    private GlyphMetrics metrics(String file) {
        Image picture = pictures.get(file);
        if (picture == null) {
            return new GlyphMetrics(0, 0, 0);
        }
        Rectangle full = picture.getBounds();
        int room = Math.max(1, text.getClientArea().width - 2 * MARGIN);
        int width = Math.min(full.width, room);
        return new GlyphMetrics(Math.max(1, full.height * width / full.width), 0, width);
    }

    private void paintPicture(PaintObjectEvent e) {
        Image picture = e.style.data instanceof String file ? pictures.get(file) : null;
        if (picture != null) {
            Rectangle full = picture.getBounds();
            e.gc.drawImage(picture, 0, 0, full.width, full.height, e.x, e.y + e.ascent - e.style.metrics.ascent,
                    e.style.metrics.width, e.style.metrics.ascent);
        }
    }

    private void forgetPictures() {
        pictures.values().forEach(Image::dispose);
        pictures.clear();
    }
}
