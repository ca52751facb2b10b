// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pitchstack.export.plot.Picture;

class PartPictureTest {
    private static final int WHITE = 0xffffff;

    @Test
    void paintsAsMuchOfTheCouponAsThereIs() {
        // 112 mm lie between margins of 20 px: 10 px a mm.
        Picture picture = PartPicture.ofCoupon(PartFile.coupon(), 1160, 1160);
        long painted = IntStream.of(picture.rgb()).filter(rgb -> rgb != WHITE).count();
        // Two arms of 106 × 8 mm share a corner of 8 × 8 mm, and have four posts of 6 × 6 mm each.
        double areaPx = 100 * (2 * 106 * 8 - 8 * 8 + 8 * 6 * 6);
        // Four sides of 106 mm, and two of 6 mm more for each post; the line round it stands out less than 2 px.
        double roundPx = 10 * (4 * 106 + 8 * 2 * 6);
        assertTrue(painted >= areaPx && painted <= areaPx + 2 * roundPx, painted + " of " + areaPx);
    }

    @Test
    void keepsTheRowWithinThePicture() {
        Picture picture = PartPicture.ofRows(SampleRows.both(), 800, 300);
        assertEquals(800 * 300, picture.rgb().length);
        int[] columns = IntStream.range(0, 800).filter(x -> IntStream.range(0, 300)
                .anyMatch(y -> picture.rgb()[y * 800 + x] != WHITE)).toArray();
        // 41 teeth of 6.35 mm, with half a lean at both ends, are far longer than two rows are high: they fill the width.
        assertEquals(20, columns[0], 1);
        assertEquals(780, columns[columns.length - 1], 1);
    }
}
