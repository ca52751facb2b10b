// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import pitchstack.core.stack.Direction;
import pitchstack.model.Approach;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Reading;

/** Rows of a table of readings as entries of a run in the model. */
public final class RunEntries {
    private RunEntries() {
    }

    /** The entries, in the order of the rows. */
    public static List<Reading> of(List<ReadingList.Row> rows) {
        return rows.stream().map(RunEntries::entry).toList();
    }

    private static Reading entry(ReadingList.Row row) {
        Reading reading = PitchstackFactory.eINSTANCE.createReading();
        reading.getSetting().addAll(row.setting().toList());
        reading.setApproach(approach(row.direction()));
        reading.setValue(row.value());
        if (!row.uncertainty().isEmpty()) {
            reading.setUncertainty(row.uncertainty());
        }
        row.temperatureC().ifPresent(reading::setTemperatureC);
        return reading;
    }

    private static Approach approach(Direction direction) {
        return switch (direction) {
            case FORWARD -> Approach.UP;
            case BACK -> Approach.DOWN;
            case UNKNOWN -> Approach.UNKNOWN;
        };
    }
}
