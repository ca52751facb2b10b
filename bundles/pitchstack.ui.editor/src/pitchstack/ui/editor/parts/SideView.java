// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import java.util.function.IntSupplier;
import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.swt.widgets.Display;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.Session;
import pitchstack.model.Row;
import pitchstack.ui.editor.figures.Look;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Dots;
import pitchstack.ui.editor.places.Extent;
import pitchstack.ui.editor.places.Mapping;
import pitchstack.ui.editor.places.Scene;

/** Which part of an axis is seen, and how large. Whoever changes it is to be told by {@link #onChange}. */
public final class SideView {
    /** One notch of the wheel, or one press of a zoom button. */
    public static final double ZOOM_STEP = 1.25;

    private final Session session;
    private final Display display;
    private final SeenPart seen;
    private final EdgeScroll edges;
    private final Look look;
    private Runnable changed = () -> { };
    private BiConsumer<Row, ToothSpan> marking = (row, teeth) -> { };
    private final List<Runnable> watchers = new CopyOnWriteArrayList<>();
    private Mapping mapping;
    private AxisSpec trial;
    private double trialShift;
    private Dots dots = Dots.NONE;
    private int lifted;
    private double lift;
    private boolean fitted = true;

    /**
     * @param session the document
     * @param canvas what it is drawn on, with its viewport
     */
    public SideView(Session session, FigureCanvas canvas) {
        this.session = session;
        display = canvas.getDisplay();
        seen = new SeenPart(canvas);
        edges = new EdgeScroll(canvas, seen);
        look = new Look(canvas);
        seen.onChange(this::tell);
    }

    /** Who draws the scene again after a change. */
    void onChange(Runnable listener) {
        changed = listener;
    }

    /** Tells a watcher, too, whenever another part is seen or something else is shown. */
    public void watch(Runnable watcher) {
        watchers.add(watcher);
    }

    /** Tells a watcher no longer. */
    public void unwatch(Runnable watcher) {
        watchers.remove(watcher);
    }

    private void tell() {
        changed.run();
        watchers.forEach(Runnable::run);
    }

    /** Who asks what the teeth of a row are fit for that have been drawn over. */
    public void onMark(BiConsumer<Row, ToothSpan> listener) {
        marking = listener;
    }

    /** Tells that teeth of a row have been drawn over, to be marked. */
    void mark(Row row, ToothSpan teeth) {
        marking.accept(row, teeth);
    }

    /** The document. */
    public Session session() {
        return session;
    }

    /** The display it is seen on. */
    Display display() {
        return display;
    }

    /** Colours and fonts. */
    public Look look() {
        return look;
    }

    /** The axis as it is to be drawn now. */
    AxisSpec spec() {
        return trial == null ? session.analysis().spec() : trial;
    }

    /**
     * Draws other numbers without changing the document; the scale stays as it is meanwhile.
     *
     * @param other the axis with as many stages, or {@code null} for what the document says
     * @param shift by how many counts all of it is drawn further right, so that what is held stays where it is
     */
    void tryOut(AxisSpec other, double shift) {
        trial = other;
        trialShift = other == null ? 0 : shift;
        tell();
    }

    /** Scrolls so that a pixel of the drawing comes to stand at a pixel of the canvas, unless all is in view. */
    void keep(IntSupplier pixel, int at) {
        if (!fitted) {
            seen.validate();
            scrollTo(pixel.getAsInt() - at, scrolled().y);
        }
    }

    /** The place at a pixel of the canvas, counted as where nothing is tried out. */
    double placeAt(int x) {
        return mapping.place(scrolled().x + (double) x);
    }

    /**
     * Makes the drawing larger while something is tried out, so that it can be scrolled on; what is seen stays where it is.
     *
     * @param side −1 left, 1 right
     */
    void makeRoom(int side) {
        Extent reach = mapping.reach();
        double px = mapping.pxPerCount();
        int lack = EdgeScroll.STEP - scrolled().x;
        if (side > 0) {
            double needed = placeAt(seen.bounds().width + EdgeScroll.STEP - Mapping.MARGIN);
            mapping = new Mapping(new Extent(reach.from(), Math.max(reach.to(), needed)), px);
        } else if (lack > 0) {
            mapping = new Mapping(new Extent(reach.from() - lack / px, reach.to()), px);
        }
        tell();
        seen.validate();
        if (side < 0 && lack > 0) {
            scrollTo(scrolled().x + lack, scrolled().y);
        }
    }

    /** The scene as it is to be drawn now. */
    public Scene scene() {
        AxisSpec spec = spec();
        Setting shown = session.shown();
        AxisPlaces places = AxisPlaces.of(spec, shown);
        Rectangle part = seen.bounds();
        if (trial == null || mapping == null) {
            mapping = fitted || mapping == null ? Mapping.fit(places.reach(), part.width)
                    : new Mapping(places.reach(), mapping.pxPerCount());
        }
        // Room for the scroll bar is always kept, so that showing it does not call for the other one.
        Bands bands = Bands.of(spec.stages().size(), part.height - seen.barHeight()).lifted(lifted, lift);
        return new Scene(spec, places, mapping.shifted(trialShift), bands, part.x, part.y, part.width, part.height);
    }

    /** Lifts a stage with all that rides on it by a part of the way out of its teeth, from the next drawing on. */
    void lift(int stage, double part) {
        lifted = stage;
        lift = part;
    }

    /** Draws again what is shown. */
    void refresh() {
        tell();
    }

    /** Where the carriage stands, whatever is shown. */
    double standing() {
        return AxisPlaces.of(session.analysis().spec(), session.analysis().current()).carriage();
    }

    /** Keeps the positions in reach that are marked on the ruler. */
    void showDots(Dots found) {
        dots = found;
    }

    /** The positions in reach that are marked on the ruler. */
    Dots dots() {
        return dots;
    }

    /** The places of the setting that is proposed, if one is. */
    Optional<AxisPlaces> proposed() {
        return session.proposal().map(move -> move.setting()).filter(setting -> setting.size() == spec().stages().size())
                .map(setting -> AxisPlaces.of(spec(), setting));
    }

    /** Pixels a tooth of a stage takes. */
    double pitchPx(int stage) {
        return mapping == null ? 0 : session.analysis().spec().stages().get(stage).pitch() * mapping.pxPerCount();
    }

    /** The carriage's position as shown, in words. */
    public String position() {
        return CarriageWords.position(session.analysis(), session.shown());
    }

    /** Whether the whole reach is kept in view. */
    public boolean isFitted() {
        return fitted;
    }

    /** Pixels a count of the scale takes now. */
    public double pxPerCount() {
        return mapping == null ? 0 : mapping.pxPerCount();
    }

    /**
     * Lays the whole axis out on a sheet of its own for as long as something is done there, such as painting it; the window
     * shows the same as before afterwards.
     *
     * @param width of the sheet in pixels
     * @param most its height, unless the axis needs less, or needs more for the names of its stages to be read
     * @param then gets the size of the sheet
     */
    public void onSheet(int width, int most, Consumer<Dimension> then) {
        Mapping usual = mapping;
        boolean kept = fitted;
        Point at = scrolled();
        try {
            fitted = true;
            seen.layOut(new Dimension(width, Bands.snug(spec().stages().size(), most) + seen.barHeight()));
            changed.run();
            seen.validate();
            then.accept(new Dimension(width, scene().bands().height()));
        } finally {
            seen.layOut(null);
            fitted = kept;
            mapping = usual;
            changed.run();
            seen.validate();
            scrollTo(at.x, at.y);
        }
    }

    /** Whether the drawing is laid out on a sheet now, and not in the window. */
    boolean isOnSheet() {
        return seen.isOnSheet();
    }

    /** Brings the whole reach into view, and keeps it there when the window changes. */
    public void fit() {
        fitted = true;
        tell();
    }

    /**
     * Zooms about a point.
     *
     * @param factor above 1 to enlarge
     * @param x the pixel of the canvas whose place stays where it is
     */
    public void zoom(double factor, int x) {
        Scene scene = scene();
        double place = scene.mapping().place(scrolled().x + x);
        mapping = scene.mapping().zoomed(factor, scene.places().finestPitch(), scene.width());
        fitted = false;
        tell();
        seen.validate();
        scrollTo((int) Math.round(mapping.px(place)) - x, scrolled().y);
    }

    /** Zooms about the middle of what is seen. */
    public void zoom(double factor) {
        zoom(factor, (Mapping.GUTTER + seen.bounds().width) / 2);
    }

    /** The pixel of the drawing at the top left of the canvas. */
    public Point scrolled() {
        return seen.scrolled();
    }

    /** Scrolls as far as the drawing goes. */
    public void scrollTo(int x, int y) {
        seen.scrollTo(x, y);
    }

    /** Scrolls by parts of what is seen across. */
    public void scrollBy(double parts) {
        scrollTo(scrolled().x + (int) Math.round(parts * (seen.bounds().width - Mapping.GUTTER)), scrolled().y);
    }

    /** Scrolls as little as needed until a part of the drawing is in sight. */
    void reveal(Rectangle bounds) {
        seen.reveal(bounds, scene().open());
    }

    /** The nearest spot at which a figure is wholly in sight. */
    Point inSight(Point wanted, Dimension size) {
        return seen.inSight(wanted, size);
    }

    /** Scrolls on while the pointer is held at a side. */
    EdgeScroll edges() {
        return edges;
    }
}
