// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import java.util.Optional;
import java.util.OptionalLong;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.edit.Session;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/**
 * What the tour sees of the window.
 *
 * @param session the document in front
 * @param tolerance what stands in the tolerance field of the Coverage view; empty while that view cannot be seen
 */
record TourSight(Optional<Session> session, Optional<String> tolerance) {
    /** Whether the fence of the examples is in front, whatever was done to it. */
    boolean isFence() {
        return session.filter(found -> "Cross-cut fence".equals(found.positioner().getTitle())
                && found.axis().getStages().size() == 2 && !found.analysis().hasErrors()).isPresent();
    }

    /** Whether the fence is in front as the example has it: where it stands, and with no barred teeth. */
    boolean isFresh() {
        return isFence() && rack() == Tour.RACK_AT_FIRST && standsAt(Tour.AT_FIRST) && !hasBarredTeeth();
    }

    /** The index of the rack, for a fence. */
    int rack() {
        return session.orElseThrow().axis().getStages().get(0).getIndex();
    }

    /** Whether the fence stands at a position. */
    boolean standsAt(String position) {
        OptionalLong now = session.orElseThrow().analysis().position(session.get().analysis().current());
        return now.isPresent() && now.getAsLong() == session.get().analysis().spec().scale().parse(position);
    }

    /** Whether the coverage within a tolerance is looked at. */
    boolean isReachedWithin(String wanted) {
        AxisSpec axis = session.orElseThrow().analysis().spec();
        try {
            return tolerance.isPresent() && axis.tolerance(tolerance.get()) == axis.tolerance(wanted);
        } catch (QuantityException e) {
            return false;
        }
    }

    /** Whether any teeth are barred. */
    boolean hasBarredTeeth() {
        var all = EcoreUtil.getAllContents(session.orElseThrow().positioner(), false);
        while (all.hasNext()) {
            if (all.next() instanceof WornRange range && range.getKind() == WearKind.BARRED) {
                return true;
            }
        }
        return false;
    }

    /** Whether the document is in a file and as it was saved. */
    boolean isSaved() {
        return session.filter(found -> found.document().getURI() != null && found.document().getURI().isFile()
                && !found.isDirty()).isPresent();
    }
}
