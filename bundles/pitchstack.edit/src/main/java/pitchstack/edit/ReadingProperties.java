// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Property.Entry;
import pitchstack.model.Approach;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Reading;

/** The facts of one reading: where each stage stood, from which side it came, and what the instrument showed. */
final class ReadingProperties {
    private static final String READING = "Reading";
    private static final String NAMED = "an entry";

    private ReadingProperties() {
    }

    static List<Property> of(Session session, Reading reading) {
        Axis axis = (Axis) reading.eContainer().eContainer();
        Scale scale = session.analysis(axis).spec().scale();
        Entries entries = new Entries(reading, NAMED);
        List<Property> all = new ArrayList<>();
        for (int stage = 0; stage < axis.getStages().size(); stage++) {
            all.add(index(session, axis, reading, stage));
        }
        all.add(entries.choice(Literals.READING__APPROACH, "direction", "From which side the carriage came: up from lower "
                + "positions, down from higher ones.", READING, Approach.VALUES));
        all.add(entries.position(Literals.READING__VALUE, "reading", "What the instrument showed, from any zero of its own; empty "
                + "while it is still to be read.", READING, scale));
        all.add(entries.size(Literals.READING__UNCERTAINTY, "known to (1 σ)", "How well this reading is known, where that differs "
                + "from the others of its run; empty otherwise.", READING, scale, 0));
        return all;
    }

    private static Property index(Session session, Axis axis, Reading reading, int stage) {
        IndexRange range = session.analysis(axis).spec().stages().get(stage).rows().indices();
        String label = "index of “" + axis.getStages().get(stage).getName() + "”";
        if (reading.getSetting().size() != axis.getStages().size()) {
            return Entries.derived("index" + stage, label, "This reading is of an earlier arrangement of stages.", READING, "?");
        }
        int now = reading.getSetting().get(stage);
        return new Property("index" + stage, label, "Where this stage stood.", READING, TrueMinus.in(String.valueOf(now)),
                List.of(), Optional.of(typed -> index(reading, stage, label, range, typed)));
    }

    private static Entry index(Reading reading, int stage, String label, IndexRange range, String typed) {
        try {
            int value = Integer.parseInt(typed.strip().replace('−', '-'));
            if (range.contains(value)) {
                return new Entry.Accepted(new ChangeReading(reading, stage, value, "Change " + label + " of " + NAMED));
            }
        } catch (NumberFormatException notWhole) {
            // falls through to the sentence that serves both mistakes
        }
        return new Entry.Refused("“" + typed.strip() + "” is not allowed for the " + label + "; give a whole number from "
                + TrueMinus.in(range.first() + " to " + range.last()) + ".");
    }
}
