// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntSupplier;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;

/**
 * Parts of a page, beside each other where there is width for it, and else one below the other. Where the page is too low or
 * too narrow for them, as it is with large letters, it scrolls, so that none of them is cut.
 */
public final class Parts {
    /** Beside each other parts are still wide enough for their tables from so much more width than height on. */
    private static final double WIDE = 1.2;
    /** What is no text, such as a chart, has at least so many lines of the height of the letters. */
    private static final int LINES_HIGH = 10;
    private static final int LINES_WIDE = 12;
    /** Beside something else it may be lower, for what is beside it scrolls by itself. */
    private static final int LEAST_LINES = 3;
    private static final int SLACK_PX = 2;

    private final ScrolledComposite scroll;
    private final SashForm sash;
    private final List<Part> parts = new ArrayList<>();
    private Needs fitted;

    /**
     * What a part needs, in pixels.
     *
     * @param control the part
     * @param share of the room, where there is enough
     * @param width at least
     * @param beside its least height beside others, at a width
     * @param below its least height below others, at a width
     */
    private record Part(Control control, int share, IntSupplier width, IntUnaryOperator beside, IntUnaryOperator below) {
        /** Its part of some room that it shares. */
        int part(List<Part> sharing, int room) {
            return (int) ((long) room * share / sharing.stream().mapToInt(Part::share).sum());
        }
    }

    /** @param parent where the page stands */
    public Parts(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.H_SCROLL | SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        sash = new SashForm(scroll, SWT.VERTICAL);
        scroll.setContent(sash);
        scroll.addListener(SWT.Resize, e -> fit());
        Listener follow = this::follow;
        scroll.getDisplay().addFilter(SWT.Traverse, follow);
        scroll.addListener(SWT.Dispose, e -> scroll.getDisplay().removeFilter(SWT.Traverse, follow));
    }

    /**
     * Brings into sight what gets the focus by Tab. What gets it in another way is in sight where a person put it, or does not
     * matter as much as what stands at the top.
     */
    private void follow(Event e) {
        if (e.detail == SWT.TRAVERSE_TAB_NEXT || e.detail == SWT.TRAVERSE_TAB_PREVIOUS) {
            scroll.getDisplay().asyncExec(() -> {
                Control focus = scroll.isDisposed() ? null : scroll.getDisplay().getFocusControl();
                for (Control at = focus; at != null && isInside(at); at = at.getParent()) {
                    if (at.getParent() instanceof ScrolledComposite around && around.getContent() == at) {
                        around.showControl(focus);
                    }
                }
            });
        }
    }

    private boolean isInside(Control control) {
        for (Control at = control; at != null; at = at.getParent()) {
            if (at == sash) {
                return true;
            }
        }
        return false;
    }

    /** The page. */
    public Control control() {
        return scroll;
    }

    /** Where the parts are to be made, in the order in which they are added. */
    public Composite place() {
        return sash;
    }

    /**
     * Adds a part that must be seen as a whole.
     *
     * @param share of the room, where there is enough
     */
    public void whole(Control part, int share) {
        IntUnaryOperator height = width -> part.computeSize(width, SWT.DEFAULT).y;
        parts.add(new Part(part, share, () -> part.computeSize(SWT.DEFAULT, SWT.DEFAULT).x, height, height));
    }

    /**
     * Adds a part that must be seen as a whole and whose words wrap.
     *
     * @param share of the room, where there is enough
     */
    public void wrapped(Control words, int share) {
        int line = line(words);
        IntUnaryOperator height = width -> words.computeSize(width, SWT.DEFAULT).y;
        parts.add(new Part(words, share, () -> LINES_WIDE * line, height, height));
    }

    /**
     * Adds a part that can be of any size, such as a chart or a long table.
     *
     * @param share of the room, where there is enough
     */
    public void free(Control part, int share) {
        int line = line(part);
        parts.add(new Part(part, share, () -> LINES_WIDE * line, width -> LEAST_LINES * line, width -> LINES_HIGH * line));
    }

    /**
     * Adds a part that scrolls by itself beside others, and is seen as a whole below others.
     *
     * @param share of the room, where there is enough
     */
    public void scrolling(ScrolledComposite part, int share) {
        int line = line(part);
        Control content = part.getContent();
        parts.add(new Part(part, share, () -> content.computeSize(SWT.DEFAULT, SWT.DEFAULT).x + part.getVerticalBar().getSize().x,
                width -> LEAST_LINES * line, width -> content.computeSize(width, SWT.DEFAULT).y));
    }

    private static int line(Control control) {
        GC gc = new GC(control);
        int line = gc.getFontMetrics().getHeight();
        gc.dispose();
        return line;
    }

    /** Brings a part into sight where the page scrolls. */
    public void reveal(Control part) {
        scroll.showControl(part);
    }

    /** Lets what scrolls be as high as its content needs at its width, and as wide as that needs at least. */
    public static void fit(ScrolledComposite scroll) {
        Control content = scroll.getContent();
        Point size = scroll.getSize();
        int least = content.computeSize(SWT.DEFAULT, SWT.DEFAULT).x;
        int height = content.computeSize(Math.max(least, size.x), SWT.DEFAULT).y;
        if (height > size.y) {
            int bar = scroll.getVerticalBar().getSize().x;
            height = content.computeSize(Math.max(least, size.x - bar), SWT.DEFAULT).y;
        }
        scroll.setMinSize(least, height);
    }

    /** Lays the parts out anew; to be called when what is in them has changed. */
    public void fit() {
        Point size = scroll.getSize();
        List<Part> shown = parts.stream().filter(part -> part.control().getVisible()).toList();
        if (shown.isEmpty() || size.x == 0 || size.y == 0) {
            return;
        }
        Needs needs = Needs.of(shown, size, sash.getSashWidth(), scroll.getVerticalBar().getSize().x);
        scroll.setMinSize(needs.width(), needs.height());
        if (!needs.equals(fitted)) {
            fitted = needs;
            weigh(shown, needs, Math.max(size.y, needs.height()));
        }
        sash.layout(true, true);
    }

    /** What a person has dragged stays until something else is needed. */
    private void weigh(List<Part> shown, Needs needs, int total) {
        int wanted = needs.beside() ? SWT.HORIZONTAL : SWT.VERTICAL;
        if (sash.getOrientation() != wanted) {
            sash.setOrientation(wanted);
        }
        List<Integer> sizes = needs.beside() ? shown.stream().map(Part::share).toList()
                : needs.shared(shown, total - (shown.size() - 1) * sash.getSashWidth());
        // A part that is not shown has a weight too.
        sash.setWeights(parts.stream().mapToInt(part -> shown.contains(part) ? sizes.get(shown.indexOf(part)) : part.share())
                .toArray());
    }

    /**
     * What parts need together.
     *
     * @param beside whether they stand beside each other
     * @param room how high the page is
     * @param width at least
     * @param heights each at least
     * @param height all of it
     */
    private record Needs(boolean beside, int room, int width, List<Integer> heights, int height) {
        static Needs of(List<Part> parts, Point size, int sash, int bar) {
            int between = (parts.size() - 1) * sash;
            boolean beside = size.x > WIDE * size.y && parts.stream().allMatch(part -> part.part(parts, size.x - between)
                    >= part.width().getAsInt());
            int least = beside ? 0 : parts.stream().mapToInt(part -> part.width().getAsInt()).max().orElseThrow();
            Needs needs = at(parts, beside, size.y, least, Math.max(least, size.x), between);
            return needs.height() <= size.y ? needs
                    : at(parts, beside, size.y, least, Math.max(least, size.x - bar), between);
        }

        private static Needs at(List<Part> parts, boolean beside, int room, int least, int width, int between) {
            List<Integer> heights = parts.stream().map(part -> SLACK_PX + (beside
                    ? part.beside().applyAsInt(part.part(parts, width - between)) : part.below().applyAsInt(width))).toList();
            return new Needs(beside, room, least, heights, beside ? heights.stream().mapToInt(h -> h).max().orElseThrow()
                    : between + heights.stream().mapToInt(h -> h).sum());
        }

        /** Heights by the shares of parts, where none is less than it needs. */
        List<Integer> shared(List<Part> parts, int total) {
            Integer[] sizes = new Integer[parts.size()];
            List<Integer> open = new ArrayList<>(IntStream.range(0, sizes.length).boxed().toList());
            int left = total;
            while (!open.isEmpty()) {
                int room = left;
                List<Part> sharing = open.stream().map(parts::get).toList();
                Integer next = open.stream().filter(i -> parts.get(i).part(sharing, room) < heights.get(i)).findFirst()
                        .orElse(open.get(0));
                sizes[next] = Math.max(heights.get(next), parts.get(next).part(sharing, room));
                left -= sizes[next];
                open.remove(next);
            }
            return List.of(sizes);
        }
    }
}
