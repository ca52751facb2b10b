// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.accuracy.fit.SpanReading;
import pitchstack.core.geometry.solid.Coupon;

class CouponPlanTest {
    @Test
    void everySpanIsOneOfTwoPostsInBothDirections() {
        assertEquals(List.of("x20.0", "x50.0", "x100.0", "y20.0", "y50.0", "y100.0"),
                CouponPlan.spans().stream().map(s -> s.direction() + s.drawnMm()).toList());
        CouponPlan.spans().forEach(s -> assertEquals(Coupon.POSTS_MM.get(s.post()), s.drawnMm()));
    }

    @Test
    void whatThePrinterAddsToEveryFaceDropsOutAndItsScaleRemains() {
        // A printer that makes everything 0.3 % too large and every post 0.12 mm too thick.
        List<SpanReading> readings = CouponPlan.spans().stream().filter(s -> s.direction().equals("x")).map(s -> {
            double over = s.overMm() * 1.003 + 0.12;
            double between = s.betweenMm() * 1.003 - 0.12;
            return new SpanReading(s.drawnMm() / 1000, (over + between) / 2 / 1000, 1e-5);
        }).toList();
        assertEquals(1 / 1.003, PrintScale.of(readings).factor(), 1e-9);
        assertEquals(0, PrintScale.of(readings).offsetM().value(), 1e-12);
    }

    @Test
    void theTableHasALineASpanToFillIn() {
        List<String> lines = CouponPlan.csv().lines().toList();
        assertEquals(7, lines.size());
        assertEquals("x,0 to 3,100,106,94,,,", lines.get(3));
        long columns = lines.get(0).chars().filter(c -> c == ',').count();
        assertTrue(lines.stream().allMatch(line -> line.chars().filter(c -> c == ',').count() == columns));
    }
}
