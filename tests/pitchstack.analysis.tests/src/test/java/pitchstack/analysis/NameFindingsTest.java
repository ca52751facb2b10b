// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

class NameFindingsTest {
    private final Positioner positioner = Samples.positioner(AxisKind.LINEAR, "5 mm", "4.9 mm");
    private final Axis axis = positioner.getAxes().get(0);

    private List<Finding> findings() {
        return AxisAnalysis.of(positioner, axis).findings();
    }

    @Test
    void warnsOfTwoAxesWithOneName() {
        positioner.getAxes().add(Samples.positioner(AxisKind.LINEAR, "4 mm").getAxes().get(0));
        Finding finding = findings().get(0);
        assertEquals("axis-name-twice", finding.id());
        assertEquals(Severity.WARNING, finding.severity());
        assertEquals("2 axes are named “Axis”, so that the command line cannot tell them apart; rename one.",
                finding.sentence());
        positioner.getAxes().get(1).setName("axis");
        assertEquals(List.of(), findings());
    }

    @Test
    void notesTwoTargetsWithOneNameOnAnAxis() {
        for (String name : new String[] {"Slot", "", "", null, "Slot "}) {
            Target target = PitchstackFactory.eINSTANCE.createTarget();
            target.setName(name);
            target.setPosition("5 mm");
            axis.getTargets().add(target);
        }
        Finding finding = findings().get(0);
        assertEquals("target-name-twice", finding.id());
        assertEquals(Severity.NOTE, finding.severity());
        assertEquals("2 targets are named “Slot”; rename them to tell them apart in lists.", finding.sentence());
        axis.getTargets().get(4).setName("Slot 2");
        assertEquals(List.of(), findings());
    }
}
