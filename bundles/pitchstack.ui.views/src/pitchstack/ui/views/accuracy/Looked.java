// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import pitchstack.analysis.accuracy.AccuracyReader;
import pitchstack.analysis.accuracy.AccuracyReading;
import pitchstack.analysis.accuracy.AxisBudget;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.TrueMinus;
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

    /** A sentence on the first stage whose rows do not meet where it stands; empty where all do. */
    String apart() {
        for (int j = 0; j < now.size(); j++) {
            RowPair rows = spec().stages().get(j).rows();
            if (rows.engagedBase(now.index(j)).isEmpty()) {
                String range = rows.indices().first() + " to " + rows.indices().last();
                return TrueMinus.in(spec().stages().get(j).title(j) + " stands at index " + now.index(j)
                        + ", where its rows do not meet; move it to an index from " + range + ".");
            }
        }
        return "";
    }

    AxisSpec spec() {
        return budget.reading().spec();
    }

    Sizes sizes() {
        return new Sizes(spec().scale());
    }
}
