// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.model.Reading;

/**
 * Puts what the instrument showed into readings that are there, such as those of a plan, one after another.
 *
 * @param readings at least one
 * @param values as many, with their units
 */
public record FillReadings(List<Reading> readings, List<String> values) implements Edit {
    /** Copies the lists; refuses lists of different length and empty ones. */
    public FillReadings {
        readings = List.copyOf(readings);
        values = List.copyOf(values);
        if (readings.isEmpty() || readings.size() != values.size()) {
            throw new IllegalArgumentException(readings.size() + " readings for " + values.size() + " values");
        }
    }

    @Override
    public String label() {
        return readings.size() == 1 ? "Fill in reading" : "Fill in " + readings.size() + " readings";
    }

    @Override
    public void apply() {
        for (int i = 0; i < readings.size(); i++) {
            readings.get(i).setValue(values.get(i));
        }
    }
}
