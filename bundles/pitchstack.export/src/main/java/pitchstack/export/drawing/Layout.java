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
    private final List<Place> placed = new ArrayList<>();
    private double columnTop;
    private double leftBottom;
    private double y;

    /** A part and where its lower left corner goes; marks are moved only once all parts have found their places. */
    private record Place(Part part, double left, double bottom) {
        double top() {
            return bottom + part.box().height();
        }
    }

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
     * @param others in the order in which they are read: groups that begin a line of their own where there is room for it
     */
    static Optional<List<Part>> of(SheetSize sheet, List<Part> column, Part bar, List<Part> views, List<List<Part>> others) {
        Layout layout = new Layout(sheet);
        layout.column(column);
        layout.bar(bar, isNarrow(sheet));
        return layout.views(views)
                && (layout.flow(others) || layout.flow(List.of(others.stream().flatMap(List::stream).toList())))
                        ? Optional.of(layout.placed.stream().map(place -> place.part.at(place.left, place.bottom)).toList())
                        : Optional.empty();
    }

    /** The title block touches the frame; what stands above it keeps away. */
    private void column(List<Part> parts) {
        for (Part part : parts) {
            boolean isFirst = placed.isEmpty();
            double left = space.right() - TitleBlockPart.WIDTH;
            boolean fillsColumn = part.box().width() > TitleBlockPart.WIDTH - 2 * GAP;
            Place here = new Place(part, fillsColumn ? left : left + GAP, columnTop + (isFirst ? 0 : GAP));
            placed.add(here);
            columnTop = here.top();
        }
    }

    private void bar(Part bar, boolean isNarrow) {
        Place here = new Place(bar, space.left() + GAP, isNarrow ? columnTop + GAP : leftBottom);
        placed.add(here);
        if (isNarrow) {
            columnTop = here.top();
        } else {
            leftBottom = here.top() + GAP;
        }
    }

    private boolean views(List<Part> views) {
        for (Part view : views) {
            double left = space.left() + (space.width() - view.box().width()) / 2;
            Place here = new Place(view, left, y - view.box().height());
            if (view.box().width() > space.width() - 2 * GAP || here.bottom < columnTop + GAP) {
                return false;
            }
            placed.add(here);
            y = here.bottom - GAP;
        }
        return true;
    }

    private boolean flow(List<List<Part>> groups) {
        List<List<Part>> shelves = new ArrayList<>();
        double top = y;
        for (List<Part> group : groups) {
            int next = 0;
            while (next < group.size()) {
                List<Part> shelf = new ArrayList<>();
                while (next < group.size() && fits(shelf, group.get(next), top)) {
                    shelf.add(group.get(next++));
                }
                if (shelf.isEmpty()) {
                    return false;
                }
                shelves.add(shelf);
                top -= height(shelf) + GAP;
            }
        }
        double spare = Math.max(0, spare(shelves, top + GAP));
        place(shelves, Math.min(WIDEST_SPREAD / 2, spare / shelves.size()));
        return true;
    }

    /** How far the lines can be moved down without one of them coming beside what it stands above now. */
    private double spare(List<List<Part>> shelves, double lowest) {
        double spare = lowest - leftBottom;
        double top = y;
        for (List<Part> shelf : shelves) {
            double bottom = top - height(shelf);
            if (bottom >= columnTop + GAP && width(shelf) > right(columnTop) - space.left() - GAP) {
                spare = Math.min(spare, bottom - columnTop - GAP);
            }
            top = bottom - GAP;
        }
        return spare;
    }

    private boolean fits(List<Part> shelf, Part more, double top) {
        List<Part> longer = new ArrayList<>(shelf);
        longer.add(more);
        double bottom = top - height(longer);
        return bottom >= leftBottom && width(longer) <= right(bottom) - space.left() - GAP;
    }

    /** How far to the right a line of parts may go. */
    private double right(double bottom) {
        return bottom >= columnTop + GAP ? space.right() - GAP : space.right() - TitleBlockPart.WIDTH - GAP;
    }

    private static double height(List<Part> shelf) {
        return shelf.stream().mapToDouble(part -> part.box().height()).max().orElse(0);
    }

    private static double width(List<Part> shelf) {
        return shelf.stream().mapToDouble(part -> part.box().width() + GAP).sum() - GAP;
    }

    private void place(List<List<Part>> shelves, double down) {
        double top = y;
        for (List<Part> shelf : shelves) {
            top -= down;
            place(shelf, top, top - height(shelf));
            top -= height(shelf) + GAP;
        }
    }

    /** Sets a line of parts with equal room between them. */
    private void place(List<Part> shelf, double top, double bottom) {
        double room = right(bottom) - space.left() - GAP;
        double taken = shelf.stream().mapToDouble(part -> part.box().width()).sum();
        double spread = Math.min(WIDEST_SPREAD, Math.max(GAP, (room - taken) / (shelf.size() + 1)));
        double all = taken + (shelf.size() - 1) * spread;
        double x = space.left() + GAP + (room - all) / 2;
        for (Part part : shelf) {
            placed.add(new Place(part, x, top - part.box().height()));
            x += part.box().width() + spread;
        }
    }
}
