// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sets parts on a sheet: the title block at the lower right with words and table above it, views across the top, and
 * whatever else in lines from left to right between them.
 */
final class Layout {
    /** Paper between parts, and between them and the frame. */
    static final double GAP = 6;
    private static final double WIDEST_SPREAD = 24;

    private final Box space;
    private final List<Part> placed = new ArrayList<>();
    private double columnTop;
    private double leftBottom;
    private double y;

    private Layout(SheetSize sheet) {
        space = sheet.drawingSpace();
        columnTop = space.bottom();
        leftBottom = space.bottom() + GAP;
        y = space.top() - GAP;
    }

    /** How wide parts may be that go across the sheet. */
    static double width(SheetSize sheet) {
        return sheet.drawingSpace().width() - 2 * GAP;
    }

    /** Whether the column of title block and words is as wide as the sheet. */
    static boolean isNarrow(SheetSize sheet) {
        return sheet.drawingSpace().width() < 2 * TitleBlockPart.WIDTH;
    }

    /**
     * All parts in their places; nothing where they do not fit.
     *
     * @param column from the title block upwards
     * @param bar the check bar
     * @param views from the top down
     * @param others in the order in which they are read
     */
    static Optional<List<Part>> of(SheetSize sheet, List<Part> column, Part bar, List<Part> views, List<Part> others) {
        Layout layout = new Layout(sheet);
        layout.column(column);
        layout.bar(bar, isNarrow(sheet));
        return layout.views(views) && layout.flow(others) ? Optional.of(layout.placed) : Optional.empty();
    }

    /** The title block touches the frame; what stands above it keeps away. */
    private void column(List<Part> parts) {
        for (Part part : parts) {
            boolean isFirst = placed.isEmpty();
            double left = space.right() - TitleBlockPart.WIDTH;
            boolean fillsColumn = part.box().width() > TitleBlockPart.WIDTH - 2 * GAP;
            Part here = part.at(fillsColumn ? left : left + GAP, columnTop + (isFirst ? 0 : GAP));
            placed.add(here);
            columnTop = here.box().top();
        }
    }

    private void bar(Part bar, boolean isNarrow) {
        Part here = bar.at(space.left() + GAP, isNarrow ? columnTop + GAP : leftBottom);
        placed.add(here);
        if (isNarrow) {
            columnTop = here.box().top();
        } else {
            leftBottom = here.box().top() + GAP;
        }
    }

    private boolean views(List<Part> views) {
        for (Part view : views) {
            double left = space.left() + (space.width() - view.box().width()) / 2;
            Part here = view.at(left, y - view.box().height());
            if (view.box().width() > space.width() - 2 * GAP || here.box().bottom() < columnTop + GAP) {
                return false;
            }
            placed.add(here);
            y = here.box().bottom() - GAP;
        }
        return true;
    }

    private boolean flow(List<Part> parts) {
        List<List<Part>> shelves = new ArrayList<>();
        List<Double> tops = new ArrayList<>();
        int next = 0;
        double top = y;
        while (next < parts.size()) {
            List<Part> shelf = new ArrayList<>();
            while (next < parts.size() && fits(shelf, parts.get(next), top)) {
                shelf.add(parts.get(next++));
            }
            if (shelf.isEmpty()) {
                return false;
            }
            shelves.add(shelf);
            tops.add(top);
            top -= height(shelf) + GAP;
        }
        place(shelves, tops);
        return true;
    }

    private boolean fits(List<Part> shelf, Part more, double top) {
        List<Part> longer = new ArrayList<>(shelf);
        longer.add(more);
        double bottom = top - height(longer);
        double width = longer.stream().mapToDouble(part -> part.box().width() + GAP).sum() - GAP;
        return bottom >= leftBottom && width <= right(bottom) - space.left() - GAP;
    }

    /** How far to the right a line of parts may go. */
    private double right(double bottom) {
        return bottom >= columnTop + GAP ? space.right() - GAP : space.right() - TitleBlockPart.WIDTH - GAP;
    }

    private static double height(List<Part> shelf) {
        return shelf.stream().mapToDouble(part -> part.box().height()).max().orElse(0);
    }

    private void place(List<List<Part>> shelves, List<Double> tops) {
        for (int i = 0; i < shelves.size(); i++) {
            List<Part> shelf = shelves.get(i);
            double bottom = tops.get(i) - height(shelf);
            double room = right(bottom) - space.left() - GAP;
            double taken = shelf.stream().mapToDouble(part -> part.box().width()).sum();
            double spread = Math.min(WIDEST_SPREAD, Math.max(GAP, (room - taken) / (shelf.size() + 1)));
            double all = taken + (shelf.size() - 1) * spread;
            double x = space.left() + GAP + (room - all) / 2;
            for (Part part : shelf) {
                placed.add(part.at(x, tops.get(i) - part.box().height()));
                x += part.box().width() + spread;
            }
        }
    }
}
