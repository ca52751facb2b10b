// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.stack.StageSpec;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;

/** Entries about accuracy that cannot be read: planning does without them, a budget takes them as not said. */
public final class AccuracyFindings {
    private static final String ID = "unreadable-accuracy";

    private AccuracyFindings() { }

    /** The same axis with a warning for every such entry; an axis with errors as it is. */
    public static AxisAnalysis with(Positioner positioner, AxisAnalysis analysis) {
        return analysis.hasErrors() ? analysis : analysis.with(of(positioner, analysis));
    }

    private static List<Finding> of(Positioner positioner, AxisAnalysis analysis) {
        Notes general = new Notes();
        AccuracyReader.readGeneral(positioner, analysis, general);
        List<Finding> findings = new ArrayList<>(warnings(general, Place.AXIS));
        Axis axis = analysis.axis();
        List<StageSpec> stages = analysis.spec().stages();
        for (int j = 0; j < stages.size(); j++) {
            Notes notes = new Notes();
            new StageReader(positioner, axis.getStages().get(j), stages.get(j), j, analysis.spec().scale(), Map.of(), notes).read();
            findings.addAll(warnings(notes, Place.stage(j)));
        }
        return findings;
    }

    private static List<Finding> warnings(Notes notes, Place place) {
        return notes.unreadable().stream().map(sentence -> new Finding(ID, Severity.WARNING, place, "", "", sentence)).toList();
    }
}
