// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Reading;

/**
 * Takes readings out of their run.
 *
 * @param readings at least one
 */
public record RemoveReadings(List<Reading> readings) implements Edit {
    /** Copies the list; refuses an empty one. */
    public RemoveReadings {
        readings = List.copyOf(readings);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("No reading to remove");
        }
    }

    @Override
    public String label() {
        return readings.size() == 1 ? "Delete reading" : "Delete " + readings.size() + " readings";
    }

    @Override
    public void apply() {
        readings.forEach(EcoreUtil::remove);
    }
}
