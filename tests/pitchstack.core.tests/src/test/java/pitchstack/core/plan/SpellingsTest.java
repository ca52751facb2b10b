// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static pitchstack.core.Stacks.axis;
import static pitchstack.core.Stacks.stage;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;

/** One stack written down in two ways. */
final class SpellingsTest {
    @Test
    void inchAndMillimetreSpellingsGiveOneAnswerToTheFemtometre() {
        AxisSpec inches = fence(new LinearScale(LengthUnit.INCH), "1/4 in CP", "0.24");
        AxisSpec millimetres = fence(new LinearScale(LengthUnit.MM), "6.35 mm", "6.096");
        Planner inInches = Planner.of(inches);
        Planner inMillimetres = Planner.of(millimetres);
        for (int sixtyFourth = 0; sixtyFourth < 96 * 64; sixtyFourth += 37) {
            String target = sixtyFourth / 64 + " " + sixtyFourth % 64 + "/64";
            // 25.4/64 mm = 0.396875 mm exactly.
            String same = BigDecimal.valueOf(396_875L * sixtyFourth, 6).toPlainString();
            PlanRequest asked = Plans.request(inches, inches.scale().parse(target), inches.scale().parse("0.005"), 3);
            PlanRequest equal = Plans.request(millimetres, millimetres.scale().parse(same),
                    millimetres.scale().parse("0.127"), 3);
            assertEquals(inInches.plan(asked), inMillimetres.plan(equal), target);
        }
    }

    private static AxisSpec fence(LinearScale scale, String rack, String printed) {
        return axis(scale, stage("rack", Pitch.parse(rack).units(scale), 0, 400),
                stage("carriage", Pitch.parse(printed).units(scale), -25, 25));
    }
}
