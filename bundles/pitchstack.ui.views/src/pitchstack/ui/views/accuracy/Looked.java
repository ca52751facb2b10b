// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import pitchstack.analysis.accuracy.AccuracyReader;
import pitchstack.analysis.accuracy.AccuracyReading;
import pitchstack.analysis.accuracy.AxisBudget;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;
import pitchstack.model.Axis;

/**
 * What the pages look at: one axis as its file has it.
 *
 * @param session whose axis it is
 * @param axis the one
 * @param budget of the axis
 * @param now where the stages stand
 */
record Looked(Session session, Axis axis, AxisBudget budget, Setting now) {
    /** Reads the axis that a session looks at; it has no errors. */
    static Looked at(Session session) {
        AccuracyReading reading = AccuracyReader.read(session.positioner(), session.analysis());
        return new Looked(session, session.axis(), new AxisBudget(reading), session.analysis().current());
    }

    /** Whether this is the same axis as another, before or after a change; {@code null} is none. */
    boolean isSameAs(Looked other) {
        return other != null && axis == other.axis;
    }

    AxisSpec spec() {
        return budget.reading().spec();
    }

    Sizes sizes() {
        return new Sizes(spec().scale());
    }
}
