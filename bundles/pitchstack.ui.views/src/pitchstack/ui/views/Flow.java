// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Layout;

/**
 * Controls in a line, which goes on below where it is too narrow for them. A control with a {@link Room} for its layout data
 * shrinks before the line breaks, and takes what room is left where it fills the line.
 */
public final class Flow extends Layout {
    private static final int BETWEEN_PX = 3;
    private static final int NARROW = 60;

    private final int gap;
    private final boolean fills;

    /**
     * @param gap between controls of a line
     * @param fills whether what can shrink takes what room is left
     */
    public Flow(int gap, boolean fills) {
        this.gap = gap;
        this.fills = fills;
    }

    /** One line of controls. */
    private final class Line {
        private final List<Control> controls = new ArrayList<>();
        private final List<Integer> widths = new ArrayList<>();
        private int used;
        private int height;

        /** Adds a control where there is room for it. */
        boolean adds(Control control, Point wanted, int room) {
            int least = shrunk(control, wanted.x);
            if (!controls.isEmpty() && used + gap + least > room) {
                return false;
            }
            used += (controls.isEmpty() ? 0 : gap) + least;
            controls.add(control);
            widths.add(least);
            height = Math.max(height, wanted.y);
            return true;
        }

        /** Gives what is left of the room to what was shrunk. */
        void stretch(int room) {
            for (int i = 0; i < controls.size(); i++) {
                Control control = controls.get(i);
                int width = widths.get(i);
                if (control.getLayoutData() != null) {
                    int most = fills ? room : wanted(control).x;
                    int more = Math.max(Math.min(0, room - used), Math.min(room - used, most - width));
                    widths.set(i, width + more);
                    used += more;
                }
            }
        }

        void place(int x, int y) {
            int left = x;
            for (int i = 0; i < controls.size(); i++) {
                int high = controls.get(i).computeSize(widths.get(i), SWT.DEFAULT).y;
                controls.get(i).setBounds(left, y + (height - high) / 2, widths.get(i), high);
                left += widths.get(i) + gap;
            }
        }
    }

    /**
     * Makes a composite that flows, as wide as there is room in a grid.
     *
     * @param columns how many columns of the grid it spans
     */
    public static Composite in(Composite grid, int columns, int gap, boolean fills) {
        Composite line = new Composite(grid, SWT.NONE);
        line.setLayout(new Flow(gap, fills));
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).hint(NARROW, SWT.DEFAULT).applyTo(line);
        return line;
    }

    /**
     * How wide a control is, as its layout data.
     *
     * @param least in pixels, before the line breaks
     * @param wanted in pixels, where there is room, or {@link SWT#DEFAULT} for what it needs
     */
    public record Room(int least, int wanted) {
        /** So many letters at least. */
        public static Room atLeast(int letters, Control control) {
            return new Room(letters(letters, control), SWT.DEFAULT);
        }

        /** As wide as so many letters. */
        public static Room of(int letters, Control control) {
            int width = letters(letters, control);
            return new Room(control.computeSize(width, SWT.DEFAULT).x, width);
        }

        private static int letters(int count, Control control) {
            GC gc = new GC(control);
            double letter = gc.getFontMetrics().getAverageCharacterWidth();
            gc.dispose();
            return (int) Math.ceil(count * letter);
        }
    }

    /** Makes a place in a line for controls that stay beside each other. */
    public static Composite together(Composite line, int gap) {
        Composite group = new Composite(line, SWT.NONE);
        group.setLayout(RowLayoutFactory.fillDefaults().wrap(false).spacing(gap).create());
        return group;
    }

    private static Point wanted(Control control) {
        return control.computeSize(control.getLayoutData() instanceof Room room ? room.wanted() : SWT.DEFAULT, SWT.DEFAULT);
    }

    private static int shrunk(Control control, int wanted) {
        return control.getLayoutData() instanceof Room room ? Math.min(room.least(), wanted) : wanted;
    }

    private static List<Control> shown(Composite composite) {
        return Stream.of(composite.getChildren()).filter(Control::getVisible).toList();
    }

    private List<Line> lines(Composite composite, int room) {
        List<Line> lines = new ArrayList<>();
        for (Control control : shown(composite)) {
            Point wanted = wanted(control);
            if (lines.isEmpty() || !lines.get(lines.size() - 1).adds(control, wanted, room)) {
                Line line = new Line();
                line.adds(control, wanted, room);
                lines.add(line);
            }
        }
        lines.forEach(line -> line.stretch(room));
        return lines;
    }

    @Override
    protected Point computeSize(Composite composite, int width, int height, boolean flushCache) {
        int wide = width == SWT.DEFAULT ? shown(composite).stream()
                .mapToInt(control -> wanted(control).x + gap).sum() : width;
        List<Line> lines = lines(composite, wide);
        int high = Math.max(0, lines.size() - 1) * BETWEEN_PX + lines.stream().mapToInt(line -> line.height).sum();
        return new Point(wide, height == SWT.DEFAULT ? high : height);
    }

    @Override
    protected void layout(Composite composite, boolean flushCache) {
        Rectangle area = composite.getClientArea();
        int y = area.y;
        for (Line line : lines(composite, area.width)) {
            line.place(area.x, y);
            y += line.height + BETWEEN_PX;
        }
    }
}
