// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.ImageIO;

/**
 * A picture of pixels.
 *
 * @param width in pixels
 * @param height in pixels
 * @param rgb one number a pixel, 0xRRGGBB, row by row from the top; not copied
 */
public record Picture(int width, int height, int[] rgb) {
    /** A picture of what was painted elsewhere; whatever shines through counts as opaque. */
    public static Picture of(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] rgb = image.getRGB(0, 0, width, height, null, 0, width);
        for (int i = 0; i < rgb.length; i++) {
            rgb[i] &= 0xffffff;
        }
        return new Picture(width, height, rgb);
    }

    /** The picture as a PNG file. */
    public byte[] png() {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.setRGB(0, 0, width, height, rgb, 0, width);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            // Without this the encoder would keep its own temporary file.
            ImageIO.setUseCache(false);
            if (!ImageIO.write(image, "png", out)) {
                throw new IllegalStateException("This Java cannot write PNG");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }
}
