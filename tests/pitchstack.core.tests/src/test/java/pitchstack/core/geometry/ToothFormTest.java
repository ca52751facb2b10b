// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Values in modules, worked out by hand from the figures of ISO 53:1998 at 20°. */
class ToothFormTest {
    private static final double PER_MODULE = Math.PI;

    @ParameterizedTest
    @EnumSource(BasicRack.class)
    void theTipLandIsHalfThePitchLessBothFlanks(BasicRack rack) {
        // π/2 − 2·tan 20°
        assertEquals(0.842856, ToothForm.of(rack, PER_MODULE).tipLandMm(), 5e-7);
    }

    @ParameterizedTest
    @CsvSource({"A,0.660871", "B,0.660871", "C,0.660871", "D,0.551680"})
    void theRootGapIsHalfThePitchLessBothFlanksBelow(BasicRack rack, double gap) {
        assertEquals(gap, ToothForm.of(rack, PER_MODULE).rootGapMm(), 5e-7);
    }

    @ParameterizedTest
    @CsvSource({"A,0.250032", "B,0.197394", "C,0.164495", "D,0.256612"})
    void theFilletReachesUpToItsRadiusLessItsSine(BasicRack rack, double height) {
        assertEquals(height, ToothForm.of(rack, PER_MODULE).filletHeightMm(), 5e-7);
    }

    @ParameterizedTest
    @CsvSource({"0.25,1.25,0.379951", "0.40,1.40,0.393940"})
    void theLargestFilletIsThatOfTheStandard(double clearance, double dedendum, double radius) {
        assertEquals(radius, ToothForm.largestFilletMm(PER_MODULE, 20, dedendum, clearance), 5e-7);
    }

    @Test
    void everyProfileOfTheStandardCanBeMade() {
        for (BasicRack rack : BasicRack.values()) {
            assertTrue(FormProblem.of(ToothForm.of(rack, 5)).isEmpty(), rack::name);
        }
    }

    @Test
    void anOwnDepthAndReliefGiveTheSameAsTheStandard() {
        double module = 5 / Math.PI;
        ToothForm own = ToothForm.own(5, 20, 2.25 * module, 0.25 * module, 0.38 * module);
        ToothForm standard = ToothForm.of(BasicRack.A, 5);
        assertEquals(standard.tipLandMm(), own.tipLandMm(), 1e-12);
        assertEquals(standard.rootGapMm(), own.rootGapMm(), 1e-12);
        assertEquals(standard.clearanceMm(), own.clearanceMm(), 1e-12);
    }

    @Test
    void flanksBearOverTheWorkingDepthLessTheReliefs() {
        // Two modules of working depth, 0.1 off at each tip, along a flank of 20°.
        ToothForm form = ToothForm.of(BasicRack.C, PER_MODULE).eased(0.1, 0, 0);
        assertEquals(1.8 / Math.cos(Math.toRadians(20)), form.bearingMm(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "0 | 20 | 3.58 | 0.4 | 0 | 0 | 0 | The pitch is 0 mm; a tooth needs one above 0.",
        "5 | 45 | 3.58 | 0.4 | 0 | 0 | 0 | The flank angle is 45°; between 0° and 45° is allowed.",
        "5 | 20 | 0.3 | 0.4 | 0 | 0 | 0 | A depth of 0.3 mm with a root relief of 0.4 mm leaves no tooth; the relief must be"
            + " at least 0 and less than the depth.",
        "5 | 20 | 7 | 0.4 | 0 | 0 | 0 | Flanks at 20° meet before the depth is reached: from the middle to tip or root less"
            + " than 3.434 mm is allowed, and here it is 3.7 mm; take less depth or a steeper flank.",
        "5 | 20 | 3.58 | 0.4 | 1 | 0 | 0 | A root fillet of 1 mm does not fit into the gap; up to 0.747 mm does.",
        "5 | 20 | 3.58 | 0.4 | 0 | 0.7 | 0 | A tip relief of 0.7 mm is more than the tip holds; up to 0.631 mm is possible.",
        "5 | 20 | 3.58 | 0.4 | 0 | 0 | 1.4 | A slot of 1.4 mm is as wide as the tip, which is 1.343 mm; make the slot"
            + " narrower.",
        "5 | 20 | 3.58 | 0.4 | 0 | -1 | 0 | Root fillet, tip relief, well and slot must not be below 0.",
    })
    void saysWhyAToothCannotBeMade(double pitch, double angle, double depth, double relief, double fillet, double tip,
            double slot, String sentence) {
        ToothForm form = ToothForm.own(pitch, angle, depth, relief, fillet).eased(tip, 0, slot);
        assertEquals(sentence, FormProblem.of(form).orElse(""));
    }
}
