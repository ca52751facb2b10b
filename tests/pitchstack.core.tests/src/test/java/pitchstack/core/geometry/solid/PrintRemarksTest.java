// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.ToothForm;

/** ISO 53 type A: tip 0.842856 modules, gap at the root 0.660871; two lines a wall and one a gap, of 0.4 mm. */
class PrintRemarksTest {
    private static List<String> ids(ToothForm form) {
        return PrintRemarks.of(form, 0.4).stream().map(Remark::id).toList();
    }

    @ParameterizedTest
    // 0.8/0.842856·π = 2.9819 mm and 0.4/0.660871·π = 1.9015 mm are the smallest pitches for tip and gap.
    @CsvSource({"2.99,", "2.97,tip-too-narrow", "1.91,tip-too-narrow", "1.89,tip-too-narrow root-gap-too-narrow"})
    void warnsBelowThePitchAtWhichThePrinterGivesUp(double pitch, String ids) {
        assertEquals(ids == null ? List.of() : List.of(ids.split(" ")), ids(ToothForm.of(BasicRack.B, pitch)));
    }

    @Test
    void saysTheNumberAndTheWayOut() {
        // A tenth of an inch: 0.808507 mm module, tip 0.6815 mm.
        assertEquals("The tip of a tooth is 0.68 mm wide, less than the 0.80 mm that the printed line needs; take less tip"
                + " relief, a larger pitch or a finer nozzle.",
                PrintRemarks.of(ToothForm.of(BasicRack.A, 2.54), 0.4).get(0).sentence());
    }

    @Test
    void lookingAtASlotItCountsTheLeavesBesideIt() {
        // At 5 mm the tip is 1.3415 mm wide; a slot of 0.5 mm leaves two leaves of 0.42 mm, one of 0.6 mm two of 0.37 mm.
        assertEquals(List.of(), ids(ToothForm.of(BasicRack.A, 5).eased(0, 0, 0.5)));
        assertEquals(List.of("leaf-too-thin"), ids(ToothForm.of(BasicRack.A, 5).eased(0, 0, 0.6)));
        assertEquals(List.of("slot-too-narrow"), ids(ToothForm.of(BasicRack.A, 5).eased(0, 0, 0.3)));
    }

    @Test
    void tipsNeedMoreClearanceThanASeatMayBeOff() {
        assertEquals(List.of("tips-may-touch"), ids(ToothForm.own(5, 20, 3.3, 0.09, 0)));
        assertEquals(List.of(), ids(ToothForm.own(5, 20, 3.3, 0.11, 0)));
    }
}
