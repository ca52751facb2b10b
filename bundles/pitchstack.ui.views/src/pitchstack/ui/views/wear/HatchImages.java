// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.EnumMap;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import pitchstack.model.WearKind;
import pitchstack.ui.views.Colours;

/**
 * Small pictures of marks, hatched as in the drawing: one way where teeth are worn, both ways where they are barred. What
 * is only supposed has a dashed frame and dotted lines.
 */
final class HatchImages {
    private static final int WIDTH = 22;
    private static final int HEIGHT = 14;
    private static final int EVERY_PX = 5;

    private final Map<WearKind, Image> marked = new EnumMap<>(WearKind.class);
    private final Map<WearKind, Image> supposed = new EnumMap<>(WearKind.class);

    /** @param owner the control with which the pictures are disposed of */
    HatchImages(Control owner) {
        for (WearKind kind : WearKind.values()) {
            marked.put(kind, image(owner, kind, false));
            supposed.put(kind, image(owner, kind, true));
        }
        owner.addListener(SWT.Dispose, e -> {
            marked.values().forEach(Image::dispose);
            supposed.values().forEach(Image::dispose);
        });
    }

    Image of(MarkItem item) {
        return (item.isSupposed() ? supposed : marked).get(item.mark().kind());
    }

    private static Image image(Control owner, WearKind kind, boolean dashed) {
        Image image = new Image(owner.getDisplay(), WIDTH, HEIGHT);
        Colours.follow(owner, () -> paint(image, owner, kind, dashed));
        return image;
    }

    private static void paint(Image image, Control owner, WearKind kind, boolean dashed) {
        GC gc = new GC(image);
        gc.setBackground(owner.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        gc.setForeground(owner.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        Rectangle area = new Rectangle(0, 0, WIDTH, HEIGHT);
        gc.fillRectangle(area);
        hatch(gc, area, kind == WearKind.BARRED, dashed);
        gc.setLineStyle(dashed ? SWT.LINE_DASH : SWT.LINE_SOLID);
        gc.drawRectangle(0, 0, WIDTH - 1, HEIGHT - 1);
        gc.dispose();
    }

    /** Lines within an area: rising ones, and falling ones too where it is crossed. */
    static void hatch(GC gc, Rectangle area, boolean crossed, boolean dotted) {
        Rectangle clip = gc.getClipping();
        gc.setClipping(clip.intersection(area));
        gc.setLineStyle(dotted ? SWT.LINE_DOT : SWT.LINE_SOLID);
        for (int x = area.x - area.height; x < area.x + area.width; x += EVERY_PX) {
            gc.drawLine(x, area.y + area.height, x + area.height, area.y);
            if (crossed) {
                gc.drawLine(x, area.y, x + area.height, area.y + area.height);
            }
        }
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setClipping(clip);
    }
}
