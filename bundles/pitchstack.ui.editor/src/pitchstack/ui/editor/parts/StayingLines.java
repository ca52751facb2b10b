// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;
import pitchstack.model.Target;
import pitchstack.ui.editor.places.Guides;
import pitchstack.ui.editor.places.Scene;

/** Everything that stays while something is dragged: ends of rows, the datum, the stops and the targets. */
final class StayingLines {
    private StayingLines() {
    }

    /** Those of a scene, with the rows of all bodies. */
    static Guides of(SideView view, Scene scene) {
        return of(view, scene, body -> true);
    }

    /** The same with the rows of some bodies only, the base being body 0. */
    static Guides of(SideView view, Scene scene, IntPredicate bodies) {
        List<Guides.Line> lines = new ArrayList<>(Guides.rows(scene.spec(), scene.places(), bodies));
        lines.addAll(Guides.marks(scene.spec()));
        for (Target target : view.session().axis().getTargets()) {
            TargetEditPart.position(target, scene.spec().scale()).ifPresent(at -> lines.add(
                    new Guides.Line(scene.place(at), "target “" + (target.getName() == null ? "" : target.getName()) + "”")));
        }
        return new Guides(scene.spec().scale(), lines, List.of());
    }
}
