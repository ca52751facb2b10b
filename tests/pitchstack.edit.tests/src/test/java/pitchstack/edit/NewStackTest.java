// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

class NewStackTest {
    @ParameterizedTest
    @EnumSource(DisplayUnit.class)
    void startsWithAStackThatPassesTheChecks(DisplayUnit unit) {
        Positioner positioner = NewStack.positioner(unit);
        assertEquals(unit, positioner.getUnit());
        assertEquals(List.of(), AxisAnalysis.of(positioner, positioner.getAxes().get(0)).findings());
    }

    /** 0.25 and 0.24 in: one tooth forward and one back is 0.01 in, 254 000 000 000 fm. */
    @Test
    void stepsByAHundredthOfAnInch() {
        Positioner positioner = NewStack.positioner(DisplayUnit.INCH);
        var spec = AxisAnalysis.of(positioner, positioner.getAxes().get(0)).spec();
        assertEquals(254_000_000_000L, spec.stages().get(0).pitch() - spec.stages().get(1).pitch());
    }

    @Test
    void takesTheUnitOfTheCountry() {
        assertEquals(DisplayUnit.INCH, NewStack.unit(Locale.US));
        assertEquals(DisplayUnit.MM, NewStack.unit(Locale.UK));
        assertEquals(DisplayUnit.MM, NewStack.unit(Locale.GERMANY));
        assertEquals(DisplayUnit.MM, NewStack.unit(Locale.ROOT));
    }

    @Test
    void givesNewStagesTheUnitOfTheFile() {
        Axis inches = NewStack.positioner(DisplayUnit.INCH).getAxes().get(0);
        Axis turns = NewStack.positioner().getAxes().get(0);
        turns.setKind(AxisKind.ROTARY);
        for (StageKind kind : StageKind.values()) {
            assertTrue(kind.stage(inches).getPitch().endsWith(" in"), kind.stage(inches).getPitch());
            assertTrue(kind.stage(turns).getPitch().contains("°"), kind.stage(turns).getPitch());
        }
        assertTrue(NewStack.stage(inches).getPitch().endsWith(" in"));
        assertTrue(NewStack.stage(turns).getPitch().endsWith("°"));
    }

    @Test
    void givesEveryKindANameOfItsOwnAndNumbersThatCanBePlanned() {
        Positioner positioner = NewStack.positioner();
        Axis axis = positioner.getAxes().get(0);
        for (StageKind kind : StageKind.values()) {
            Stage stage = kind.stage(axis);
            assertTrue(axis.getStages().stream().noneMatch(other -> other.getName().equals(stage.getName())));
            axis.getStages().add(stage);
        }
        assertTrue(AxisAnalysis.of(positioner, axis).findings().stream().noneMatch(f -> f.severity() == Severity.ERROR));
    }
}
