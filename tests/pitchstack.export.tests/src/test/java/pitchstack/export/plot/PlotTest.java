// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the plots say, in words and in pixels; each is kept under target/plots to be looked at. */
class PlotTest {
    private static final PlotLook SMALL = new PlotLook(420, 260, 1, 12, Palette.LIGHT);
    private static final PlotLook DARK = new PlotLook(420, 260, 1, 12, Palette.DARK);
    private static final PlotLook SHARP = new PlotLook(420, 260, 2, 12, Palette.LIGHT);

    static List<Plot> all() {
        return Samples.all();
    }

    @ParameterizedTest
    @MethodSource("all")
    void drawsTheSamePixelsEachTime(Plot plot) throws IOException {
        Picture once = plot.draw(SMALL);
        assertEquals(420 * 260, once.rgb().length);
        assertArrayEquals(once.rgb(), plot.draw(SMALL).rgb());
        keep(plot, "light", once);
    }

    @ParameterizedTest
    @MethodSource("all")
    void followsTheColoursItIsGiven(Plot plot) throws IOException {
        Picture dark = plot.draw(DARK);
        assertEquals(Palette.DARK.ground(), dark.rgb()[0]);
        assertTrue(count(dark, Palette.DARK.ground()) > dark.rgb().length / 3, "mostly ground");
        assertEquals(0, count(dark, Palette.LIGHT.ground()), "nothing is left of the other ground");
        assertTrue(count(dark, Palette.DARK.first()) > 0);
        keep(plot, "dark", dark);
    }

    /** Twice the pixels each way, and no picture of the small one blown up: there, all pixels come in fours. */
    @ParameterizedTest
    @MethodSource("all")
    void drawsFinerWithMorePixelsToThePoint(Plot plot) throws IOException {
        Picture sharp = plot.draw(SHARP);
        assertEquals(List.of(840, 520), List.of(sharp.width(), sharp.height()));
        long different = IntStream.range(0, 420 * 260).filter(i -> {
            int at = i / 420 * 2 * 840 + i % 420 * 2;
            return sharp.rgb()[at] != sharp.rgb()[at + 1] || sharp.rgb()[at] != sharp.rgb()[at + 840];
        }).count();
        assertTrue(different > 500, different + " of the fours are not alike");
        keep(plot, "sharp", sharp);
    }

    /** Letters half as large again as usual, in a chart as narrow as a view: words that are cut run into the edge. */
    @ParameterizedTest
    @MethodSource("all")
    void cutsNoWordsWhereLettersAreLarge(Plot plot) throws IOException {
        Picture large = plot.draw(new PlotLook(380, 260, 1, 19, Palette.LIGHT));
        keep(plot, "large", large);
        for (int y = 0; y < large.height(); y++) {
            assertEquals(Palette.LIGHT.ground(), large.rgb()[y * large.width()], "left edge at " + y);
            assertEquals(Palette.LIGHT.ground(), large.rgb()[(y + 1) * large.width() - 1], "right edge at " + y);
        }
        for (int x = 0; x < large.width(); x++) {
            assertEquals(Palette.LIGHT.ground(), large.rgb()[(large.height() - 1) * large.width() + x], "lower edge at " + x);
        }
    }

    @ParameterizedTest
    @MethodSource("all")
    void writesAPictureFileThatReadsBack(Plot plot) throws IOException {
        Picture picture = plot.draw(SMALL);
        BufferedImage read = ImageIO.read(new ByteArrayInputStream(picture.png()));
        int[] rgb = read.getRGB(0, 0, 420, 260, null, 0, 420);
        assertArrayEquals(picture.rgb(), Arrays.stream(rgb).map(p -> p & 0xffffff).toArray());
    }

    /** Shares 9, 4 and 3 of 16: 56, 25 and 19 %. */
    @Test
    void drawsBarsAsLongAsTheSharesTheLargestFirst() {
        Picture picture = Samples.budget().draw(SMALL);
        List<Integer> lengths = IntStream.range(0, 200).map(y -> run(picture, y, Palette.LIGHT.first())).filter(n ->
                n > 12)
                .distinct().boxed().toList();
        assertEquals(9.0 / 4, (double) lengths.get(0) / lengths.get(1), 0.05, "of the two filled bars: " + lengths);
        assertEquals("Parts of the uncertainty, as parts of its square: Fine row 56 %, repeats; Rack 25 %, repeats;"
                + " Seat 19 %, differs each time; all of it 100 %.", Samples.budget().description());
    }

    /** The mark moves as far as the preload: from 25 to 75 N of 100 is half the axis. */
    @Test
    void marksThePreloadThatIsLookedAt() {
        int quarter = markedColumn(Samples.bearing(25).draw(SMALL));
        int three = markedColumn(Samples.bearing(75).draw(SMALL));
        int half = markedColumn(Samples.bearing(50).draw(SMALL));
        assertEquals(half, (quarter + three) / 2.0, 1);
        assertTrue(three - quarter > 100, quarter + " to " + three);
    }

    /** The hand example of ISO 230-2's definitions: means 2, 1 from below and 0, 5 from above, s = √2 µm each. */
    @Test
    void saysMeansAndSpreadsOfARun() {
        assertEquals("Deviation at 2 targets. At 0 mm: from below 2.00 ± 2.8 µm from above 0 ± 2.8 µm. At 1.000 mm:"
                + " from below 1.00 ± 2.8 µm from above 5.00 ± 2.8 µm.", Samples.run().description());
    }

    @Test
    void saysWhereTheErrorIsLargestAndWhatIsLeftOfAFit() {
        assertEquals("Error along the travel. It is smallest at 0 mm: ±20 µm, of which ±12 µm differs each time, and"
                + " largest at 1000 mm: ±70 µm, of which ±12 µm differs each time.", Samples.travel(0).description());
        assertEquals("What the fit leaves of 12 readings, at most 6.0 µm; one is farther off than chance explains.",
                Samples.residuals().description());
        assertEquals("Movement with warmth. At 15.0 °C −20 ± 8.0 µm. At 28.0 °C 32 ± 8.0 µm.", Samples.warmth()
                .description());
    }

    @Test
    void saysHowManyIndicesStandOffByMoreThanChance() {
        assertEquals("Rack: errors of 5 indices, at most 4.0 µm; 2 are larger than chance explains (95 %). Fine row: errors of 5"
                + " indices, at most 4.0 µm; 2 are larger than chance explains (95 %).", Samples.indexErrors().description());
    }

    @Test
    void drawsAnIntervalTwiceAsWideTwiceAsHigh() {
        Picture picture = new IndexErrorPlot(List.of(new IndexErrorPlot.Stage("Rack", List.of(
                new IndexErrorPlot.Point(0, 0, 2e-6), new IndexErrorPlot.Point(10, 0, 4e-6)))), PlotUnit.UM).draw(SMALL);
        assertEquals(2, (double) highest(picture, 210, 420) / highest(picture, 0, 210), 0.1);
    }

    /** The longest upright run of the first colour between two columns. */
    private static int highest(Picture picture, int from, int to) {
        int longest = 0;
        for (int x = from; x < to; x++) {
            int run = 0;
            for (int y = 0; y < picture.height(); y++) {
                run = picture.rgb()[y * picture.width() + x] == Palette.LIGHT.first() ? run + 1 : 0;
                longest = Math.max(longest, run);
            }
        }
        return longest;
    }

    @Test
    void convertsToTheUnitsOfTheShop() {
        assertEquals(1, PlotUnit.INCH.of(0.0254), 1e-12);
        assertEquals(10, PlotUnit.THOU.of(0.000254), 1e-9);
        assertEquals(3600, PlotUnit.ARC_SECOND.of(Math.PI / 180), 1e-9);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0|0", "0.0621|0.062", "-1234.5|−1200", "5|5.0", "0.000999|0.0010"})
    void writesNumbersOutInFull(String pair) {
        String[] parts = pair.split("\\|");
        assertEquals(parts[1], Figures.of(Double.parseDouble(parts[0]), 2));
    }

    @Test
    void refusesWhatCannotBeDrawn() {
        assertThrows(IllegalArgumentException.class, () -> new PlotLook(20, 260, 1, 12, Palette.LIGHT));
        assertThrows(IllegalArgumentException.class, () -> new BearingPlot(List.of(), 0, PlotUnit.UM));
    }

    private static int markedColumn(Picture picture) {
        return IntStream.range(0, picture.width()).boxed().max((a, b) -> Long.compare(marked(picture, a),
                marked(picture, b)))
                .orElseThrow();
    }

    private static long marked(Picture picture, int x) {
        return IntStream.range(0, picture.height()).filter(y -> {
            int p = picture.rgb()[y * picture.width() + x];
            return (p >> 16 & 0xff) > 140 && (p & 0xff00) < 0x7000 && (p & 0xff) < 0x80;
        }).count();
    }

    /** The longest run of a colour in a line of pixels. */
    private static int run(Picture picture, int y, int colour) {
        int longest = 0;
        int run = 0;
        for (int x = 0; x < picture.width(); x++) {
            run = picture.rgb()[y * picture.width() + x] == colour ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }

    private static long count(Picture picture, int colour) {
        return Arrays.stream(picture.rgb()).filter(p -> p == colour).count();
    }

    private static void keep(Plot plot, String look, Picture picture) throws IOException {
        Path folder = Files.createDirectories(Path.of("target/plots"));
        Files.write(folder.resolve(plot.getClass().getSimpleName() + "-" + look + ".png"), picture.png());
    }
}
