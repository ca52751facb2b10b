// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;
import pitchstack.ui.editor.pictures.PageFit;

/** Where a drawing goes on a page. */
class PageFitTest {
    /** 600 × 200 on 300 × 400 with margins of 20: 260 wide, so 260/600 · 200 = 86.7 high. */
    @Test
    void standsOnThePageAsLargeAsItsShapeAllows() {
        assertEquals(new Rectangle(30, 40, 260, 87), new PageFit(new Rectangle(10, 20, 300, 400), 20).place(600, 200));
        assertEquals(new Rectangle(100, 40, 120, 360), new PageFit(new Rectangle(10, 20, 300, 400), 20).place(200, 600));
    }
}
