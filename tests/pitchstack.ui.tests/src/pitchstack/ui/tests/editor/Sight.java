// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import org.eclipse.draw2d.FigureCanvas;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.swt.graphics.Point;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.RulerStep;
import pitchstack.edit.Session;
import pitchstack.ui.editor.places.AxisPlaces;
import pitchstack.ui.editor.places.Bands;
import pitchstack.ui.editor.places.Mapping;

/** Where on the canvas a fitted drawing of a session must show things, worked out from the places alone. */
final class Sight {
    private final Session session;

    Sight(Session session) {
        this.session = session;
    }

    private Dimension size() {
        FigureCanvas canvas = Desk.canvas();
        return canvas.getViewport().getClientArea().getSize();
    }

    private AxisSpec spec() {
        return session.analysis().spec();
    }

    private AxisPlaces places() {
        return AxisPlaces.of(spec(), session.shown());
    }

    private Mapping mapping() {
        return Mapping.fit(places().reach(), size().width);
    }

    private Bands bands() {
        return Bands.of(spec().stages().size(), size().height - Desk.canvas().getHorizontalBar().getSize().y);
    }

    /** The middle of the body that a stage moves. */
    Point body(int stage) {
        return new Point((int) mapping().px(places().bodies().get(stage + 1).extent().middle()),
                bands().stageTop(stage) + bands().body() / 2);
    }

    /** The first letters of its name, where that stands right of it. */
    Point nameBeside(int stage) {
        return new Point((int) mapping().px(places().bodies().get(stage + 1).extent().to()) + 18, body(stage).y);
    }

    /** The top of that body. */
    int bodyTop(int stage) {
        return bands().stageTop(stage);
    }

    /** The label of a stage. */
    Point label(int stage) {
        return new Point(Mapping.GUTTER / 2, bands().stageTop(stage) + bands().body() / 2);
    }

    /** A tooth of a base row, below its root. */
    Point baseTooth(int stage, int tooth) {
        double cell = places().stages().get(stage).base().edge(tooth) + places().stages().get(stage).base().pitch() / 4;
        return new Point((int) mapping().px(cell), bands().baseTop(stage) + Bands.STRIP / 2);
    }

    /** The height at which a new stage goes to a place of the stack. */
    int gapY(int place) {
        return bands().stageTop(place - 1);
    }

    /** The pixel of a position. */
    int px(double position) {
        return (int) Math.round(mapping().px(position));
    }

    /** The small ticks of the ruler at this scale, whose numbers take at least 84 pixels each, as a length. */
    double tick() {
        RulerStep step = RulerStep.of(spec().scale(), 84 / mapping().pxPerCount());
        return step.counts() / step.parts();
    }

    /** The position of a pixel. */
    double position(int px) {
        return mapping().place(px);
    }

    /** The end of a base row on the strip below its teeth; the first end is that of tooth 0. */
    Point baseEnd(int stage, boolean first) {
        double edge = places().stages().get(stage).base().edge(first ? 0 : places().stages().get(stage).base().teeth());
        return new Point((int) Math.round(mapping().px(edge)), bands().baseTop(stage) + Bands.STRIP / 2);
    }

    /** The far end of a rider row on the strip above its teeth. */
    Point riderEnd(int stage) {
        double edge = places().stages().get(stage).rider().edge(places().stages().get(stage).rider().teeth());
        return new Point((int) Math.round(mapping().px(edge)), bands().riderTop(stage) + Bands.STRIP / 2);
    }

    /** The base tooth of a stage at a pixel. */
    int baseToothAt(int stage, int px) {
        return (int) Math.floor((mapping().place(px) - places().stages().get(stage).base().left())
                / places().stages().get(stage).base().pitch());
    }

    /** Pixels of so many teeth of a stage. */
    int teeth(int stage, int count) {
        return (int) Math.round(count * spec().stages().get(stage).pitch() * mapping().pxPerCount());
    }

    Setting shown() {
        return session.shown();
    }
}
