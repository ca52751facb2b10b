// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.editor;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.jface.viewers.StructuredSelection;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.ui.editor.StackEditor;
import pitchstack.ui.editor.StackPage;
import pitchstack.ui.editor.pictures.Picture;
import pitchstack.ui.tests.views.Hands;

/** What is put on paper. */
class PaperTest {
    @TempDir
    private Path folder;

    @AfterEach
    void close() {
        new Hands().colours(Theme.LIGHT);
        Desk.closeAll();
    }

    private StackPage page() throws IOException {
        return ((StackEditor) Desk.draw(Stacks.pair(), folder)).page();
    }

    private static byte[] drawn(StackPage page, boolean whole) {
        return Picture.forPaper(page, "fence", whole).data;
    }

    @Test
    void showsTheWholeAxisWhateverIsSeenAndLeavesTheWindowAsItIs() throws IOException {
        StackPage page = page();
        byte[] whole = drawn(page, true);
        byte[] seen = drawn(page, false);
        page.view().zoom(6);
        page.view().scrollTo(400, 0);
        Desk.settle();
        double scale = page.view().pxPerCount();
        Point at = page.view().scrolled();
        assertArrayEquals(whole, drawn(page, true));
        assertFalse(Arrays.equals(seen, drawn(page, false)), "what is seen is another part now");
        Desk.settle();
        assertEquals(scale, page.view().pxPerCount());
        assertEquals(at, page.view().scrolled());
        assertFalse(page.view().isFitted());
    }

    @Test
    void isDarkOnWhiteAlsoInADarkWindow() throws IOException {
        StackPage page = page();
        new Hands().colours(Theme.LIGHT);
        byte[] light = drawn(page, true);
        new Hands().colours(Theme.DARK);
        ImageData dark = Picture.forPaper(page, "fence", true);
        assertArrayEquals(light, dark.data);
        assertEquals(new RGB(255, 255, 255), dark.palette.getRGB(dark.getPixel(dark.width - 1, dark.height - 1)));
        assertTrue(page.view().look().ground().getRed() < 128, "the window stays dark");
    }

    @Test
    void marksNothingAsSelected() throws IOException {
        StackPage page = page();
        byte[] plain = drawn(page, true);
        page.selection().setSelection(new StructuredSelection(
                page.view().session().axis().getStages().get(0)));
        Desk.settle();
        assertArrayEquals(plain, drawn(page, true));
    }
}
