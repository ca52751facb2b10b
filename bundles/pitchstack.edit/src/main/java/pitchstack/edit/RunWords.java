// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import pitchstack.model.MeasurementRun;

/** How a run is called. */
public final class RunWords {
    private RunWords() {
    }

    /** Its date and instrument, or else its id: {@code 2026-03-02, caliper}. */
    public static String title(MeasurementRun run) {
        String known = Stream.of(run.getDate(), run.getInstrument()).filter(text -> text != null && !text.isBlank())
                .collect(Collectors.joining(", "));
        return !known.isEmpty() ? known : run.getId() == null || run.getId().isBlank() ? "without a date" : run.getId();
    }
}
