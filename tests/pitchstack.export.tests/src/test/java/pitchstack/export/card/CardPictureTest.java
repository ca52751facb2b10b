// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.export.drawing.Painted;

/** The pictures of the cards in the user guide, which {@code -Dpictures.renew=true} paints anew. */
class CardPictureTest {
    private static final Path PICTURES = Path.of("../../bundles/pitchstack.help/pictures");
    private static final float GUIDE_DPI = 70;

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void theGuideShowsTheFirstSheetAsItIs(String example) throws IOException {
        Path file = PICTURES.resolve("card-" + example + ".png");
        BufferedImage now = Painted.pdf(CardFormat.PDF.bytes(Cards.ofExample(example)), GUIDE_DPI);
        if (Boolean.getBoolean("pictures.renew")) {
            ImageIO.write(now, "png", file.toFile());
        }
        BufferedImage shown = new BufferedImage(now.getWidth(), now.getHeight(), BufferedImage.TYPE_BYTE_GRAY);
        shown.createGraphics().drawImage(ImageIO.read(file.toFile()), 0, 0, null);
        assertEquals(0, Painted.missing(now, shown), Painted.dark(now) / 1000.0);
        assertEquals(0, Painted.missing(shown, now), Painted.dark(now) / 1000.0);
    }
}
