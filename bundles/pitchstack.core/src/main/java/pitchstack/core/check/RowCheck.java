// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;

/** A check that looks at one row at a time. */
interface RowCheck extends Check {
    /**
     * Looks at one row.
     *
     * @param row the row
     * @param j the place of its stage, counted from the lowest, 0
     * @param part which row of the stage
     * @param which how sentences name the row, such as {@code base row of stage “Rack”}
     */
    List<Finding> at(RowSpec row, int j, Place.Part part, String which);

    @Override
    default List<Finding> apply(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (int j = 0; j < subject.axis().stages().size(); j++) {
            StageSpec stage = subject.axis().stages().get(j);
            findings.addAll(at(stage.rows().base(), j, Place.Part.BASE_ROW, "base row of stage " + stage.title(j)));
            findings.addAll(at(stage.rows().rider(), j, Place.Part.RIDER_ROW, "rider row of stage " + stage.title(j)));
        }
        return findings;
    }
}
