// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/** Words and a field in each row, one after the other; words that would take much more than half of the width wrap. */
public final class Pairs extends Layout {
    private static final double MOST_PART = 0.55;

    private final int across;
    private final int down;

    /**
     * @param across between words and field
     * @param down between rows
     */
    public Pairs(int across, int down) {
        this.across = across;
        this.down = down;
    }

    /** As wide as the widest words, and no wider than their part of a width. */
    private int words(Control[] all, int width) {
        int widest = IntStream.range(0, all.length / 2).map(i -> all[2 * i].computeSize(SWT.DEFAULT, SWT.DEFAULT).x).max()
                .orElse(0);
        return width == SWT.DEFAULT ? widest : Math.max(1, Math.min(widest, (int) (MOST_PART * (width - across))));
    }

    private static int height(Control words, Control field, int width) {
        return Math.max(words.computeSize(width, SWT.DEFAULT).y, field.computeSize(SWT.DEFAULT, SWT.DEFAULT).y);
    }

    @Override
    protected Point computeSize(Composite composite, int width, int height, boolean flushCache) {
        Control[] all = composite.getChildren();
        int words = words(all, width);
        int rows = all.length / 2;
        int high = IntStream.range(0, rows).map(i -> height(all[2 * i], all[2 * i + 1], words)).sum()
                + Math.max(0, rows - 1) * down;
        return new Point(width == SWT.DEFAULT ? words + across + words : width, height == SWT.DEFAULT ? high : height);
    }

    @Override
    protected void layout(Composite composite, boolean flushCache) {
        Control[] all = composite.getChildren();
        Rectangle area = composite.getClientArea();
        int words = words(all, area.width);
        int y = area.y;
        for (int i = 0; i + 1 < all.length; i += 2) {
            int high = height(all[i], all[i + 1], words);
            int wordsHigh = all[i].computeSize(words, SWT.DEFAULT).y;
            int fieldHigh = all[i + 1].computeSize(SWT.DEFAULT, SWT.DEFAULT).y;
            all[i].setBounds(area.x, y + (high - wordsHigh) / 2, words, wordsHigh);
            all[i + 1].setBounds(area.x + words + across, y + (high - fieldHigh) / 2,
                    Math.max(0, area.width - words - across), fieldHigh);
            y += high + down;
        }
    }
}
