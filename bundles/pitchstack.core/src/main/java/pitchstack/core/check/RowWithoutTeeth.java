// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.StageSpec;

/** Each row needs a tooth. */
public final class RowWithoutTeeth implements Check {
    @Override
    public List<Finding> apply(Subject subject) {
        List<Finding> findings = new ArrayList<>();
        for (int j = 0; j < subject.axis().stages().size(); j++) {
            StageSpec stage = subject.axis().stages().get(j);
            look(findings, Place.row(j, Place.Part.BASE_ROW), "base row of stage " + stage.title(j), stage.rows().base());
            look(findings, Place.row(j, Place.Part.RIDER_ROW), "rider row of stage " + stage.title(j),
                    stage.rows().rider());
        }
        return findings;
    }

    private static void look(List<Finding> findings, Place place, String which, RowSpec row) {
        if (row.teeth() < 1) {
            findings.add(new Finding("row-without-teeth", Severity.ERROR, place, row.teeth() + " teeth", "1 tooth",
                    "The " + which + " has " + row.teeth() + " teeth; give it at least 1."));
        }
    }
}
