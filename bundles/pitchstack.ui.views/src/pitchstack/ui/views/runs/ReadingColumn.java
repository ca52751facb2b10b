// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import pitchstack.edit.Properties;
import pitchstack.edit.Property;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Reading;

/**
 * A column of the readings.
 *
 * @param title above it; numbers stand on the right where it ends with a tab
 * @param property the id of the fact of a reading that is typed in it; empty for what follows from others
 * @param tooltip what it holds
 */
record ReadingColumn(String title, String property, String tooltip) {
    static final ReadingColumn NUMBER = new ReadingColumn("#\t", "", "The place in the run");
    static final ReadingColumn DIRECTION = new ReadingColumn("Coming", "approach", "From which side the carriage came: up from "
            + "lower positions, down from higher ones");
    static final ReadingColumn READING = new ReadingColumn("Reading\t", "value", "What the instrument showed; empty while it is "
            + "still to be read");
    static final ReadingColumn DEVIATION = new ReadingColumn("Off the plan\t", "", "The reading less where the file as it stands "
            + "puts the carriage; ! marks one that is farther off than chance explains");

    /** All columns of an axis: what was read beside the place, so that a narrow view shows both, then an index a stage. */
    static List<ReadingColumn> of(Axis axis) {
        List<ReadingColumn> all = new ArrayList<>(List.of(NUMBER, READING, DEVIATION, DIRECTION));
        for (int j = 0; j < axis.getStages().size(); j++) {
            String name = axis.getStages().get(j).getName();
            String title = name == null || name.isBlank() ? "Stage " + (j + 1) : name;
            all.add(new ReadingColumn(title + "\t", "index" + j, "The index of “" + title + "” at this reading"));
        }
        return all;
    }

    boolean isTyped() {
        return !property.isEmpty();
    }

    /** The fact that is typed in it. */
    Property fact(Session session, Reading reading) {
        return Properties.of(session, reading).stream().filter(one -> one.id().equals(property)).findFirst().orElseThrow();
    }
}
