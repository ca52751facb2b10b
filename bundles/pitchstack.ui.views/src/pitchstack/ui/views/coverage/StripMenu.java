// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.IMenuManager;
import org.eclipse.jface.action.MenuManager;
import org.eclipse.jface.action.Separator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import pitchstack.core.units.TrueMinus;
import pitchstack.ui.views.coverage.strip.Spot;

/** The context menu of the strip, for the position under the pointer; called by a key, for where the carriage stands. */
final class StripMenu {
    private static final double CLOSER = 4;

    private final StripCanvas strip;
    private final Canvas canvas;
    private final Consumer<Spot> plan;
    private final StripHands hands;
    private int at;

    /** @param plan called with a position that shall be planned */
    StripMenu(StripCanvas strip, Consumer<Spot> plan, StripHands hands) {
        this.strip = strip;
        this.plan = plan;
        this.hands = hands;
        canvas = strip.control();
        canvas.addListener(SWT.MenuDetect, event -> at = event.detail == SWT.MENU_KEYBOARD ? carriage()
                : canvas.toControl(new Point(event.x, event.y)).x);
        MenuManager menu = new MenuManager();
        menu.setRemoveAllWhenShown(true);
        menu.addMenuListener(this::fill);
        canvas.setMenu(menu.createContextMenu(canvas));
    }

    private int carriage() {
        return strip.sight().map(sight -> strip.interest().orElse(sight.from()) - sight.from()).map(
                way -> (int) Math.round(way / strip.sight().orElseThrow().size() * strip.width()) - strip.onChart(0)).orElse(0);
    }

    private void fill(IMenuManager menu) {
        Optional<Spot> spot = strip.spot(at);
        String where = spot.flatMap(one -> strip.chart().map(chart -> TrueMinus.in(chart.scale().format(one.position()))))
                .orElse("");
        add(menu, "&Plan a Move to " + (where.isEmpty() ? "This Position" : where), spot.isPresent(), () -> plan.accept(spot.get()));
        add(menu, "&Copy Position", spot.isPresent(), () -> copy(where));
        menu.add(new Separator());
        add(menu, "Look C&loser Here", strip.sight().isPresent(), () -> hands.zoom(CLOSER, at));
        add(menu, "Look from &Farther Off", strip.sight().isPresent(), () -> hands.zoom(1 / CLOSER, at));
        add(menu, "Show &All", strip.sight().isPresent(), hands::all);
    }

    private static void add(IMenuManager menu, String text, boolean possible, Runnable what) {
        Action action = new Action(text) {
            @Override
            public void run() {
                what.run();
            }
        };
        action.setEnabled(possible);
        menu.add(action);
    }

    private void copy(String text) {
        Clipboard clipboard = new Clipboard(canvas.getDisplay());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }
}
