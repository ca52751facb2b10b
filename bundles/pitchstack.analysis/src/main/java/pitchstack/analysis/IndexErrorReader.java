// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.IndexError;
import pitchstack.model.Stage;

/**
 * Reads the measured errors of a stage's indices.
 *
 * @param stage the stage
 * @param j its place, counted from the lowest, 0
 * @param scale the scale of its axis
 * @param temperatureC today's temperature
 * @param meeting the indices at which its rows meet; an error of any other is left out, for no move leads there
 */
record IndexErrorReader(Stage stage, int j, Scale scale, double temperatureC, IndexRange meeting) {
    /**
     * The errors as they are today.
     *
     * @param unreadable where to note what cannot be read, or is given twice
     * @param remarks where to note what is left out
     */
    IndexErrors read(List<Finding> unreadable, List<Finding> remarks) {
        TreeMap<Integer, Long> errors = new TreeMap<>();
        Set<Integer> seen = new HashSet<>();
        for (IndexError entry : stage.getIndexErrors()) {
            int index = entry.getIndex();
            String text = entry.getError() == null ? "" : entry.getError();
            if (!seen.add(index)) {
                unreadable.add(new Finding("index-error-twice", Severity.ERROR, Place.stage(j), "index " + index,
                        "one error for each index", "Stage “" + stage.getName() + "” gives the error of index " + index
                                + " more than once; keep one of them."));
            } else if (!meeting.isEmpty() && !meeting.contains(index)) {
                remarks.add(outside(index));
            } else {
                try {
                    errors.put(index, Quantities.errorToday(scale.parse(text), stage, scale, temperatureC));
                } catch (QuantityException e) {
                    unreadable.add(new Finding("unreadable-index-error", Severity.ERROR, Place.stage(j), text, "",
                            "The error of index " + index + " cannot be read: " + e.getMessage()));
                }
            }
        }
        // Rows too long to plan with are a finding of their own, and must not cost the memory of their length.
        boolean tooLong = (long) meeting.last() - meeting.first() > 2L * Soundness.MOST_TEETH;
        return meeting.isEmpty() || tooLong ? IndexErrors.NONE : IndexErrors.of(errors);
    }

    private Finding outside(int index) {
        String limit = meeting.first() + " to " + meeting.last();
        return new Finding("index-error-outside-rows", Severity.WARNING, Place.stage(j), "index " + index, limit,
                "Stage “" + stage.getName() + "” has an error for index " + index + ", but its rows meet from index "
                        + limit + " only; delete the error or lengthen a row.");
    }
}
