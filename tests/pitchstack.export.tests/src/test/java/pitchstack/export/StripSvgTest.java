// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import pitchstack.core.stack.AxisSpec;

class StripSvgTest {
    private static final double ROUNDING = 1e-4;

    @TempDir
    private Path folder;

    /**
     * The travel, −4.9 to 9.9 mm, is 14.8 mm long and is drawn 257 mm wide. Within 0.05 mm of its positions, lowest
     * first: 0.05 clean, 4.8 not, 0.1 clean, 0.1 worn, 4.7 not, 0.1 clean, 0.1 worn, 4.8 not, 0.05 worn.
     */
    @Test
    void drawsEveryStretchTrueToScale() throws Exception {
        double[] lengths = {0.05, 4.8, 0.1, 0.1, 4.7, 0.1, 0.1, 4.8, 0.05};
        String[] names = {"clean", "not", "clean", "worn", "not", "clean", "worn", "not", "worn"};
        List<Element> stretches = stretches(parse(strip("mm", "Slide")));
        assertEquals(lengths.length, stretches.size());
        double x = 20;
        for (int i = 0; i < lengths.length; i++) {
            assertEquals(names[i], stretches.get(i).getAttribute("class"));
            assertEquals(lengths[i] * 257 / 14.8, number(stretches.get(i), "width"), ROUNDING);
            assertEquals(x, number(stretches.get(i), "x"), ROUNDING);
            x += lengths[i] * 257 / 14.8;
        }
    }

    @Test
    void tellsTheKindsApartByHeightHatchAndWords() throws Exception {
        List<Element> stretches = stretches(parse(strip("mm", "Slide")));
        Element clean = stretches.get(0);
        Element not = stretches.get(1);
        Element worn = stretches.get(3);
        assertTrue(number(clean, "height") > number(worn, "height"));
        assertTrue(number(worn, "height") > number(not, "height"));
        assertEquals(List.of("#7f7f7f", "url(#hatch)", "url(#cross)"),
                List.of(clean.getAttribute("fill"), worn.getAttribute("fill"), not.getAttribute("fill")));
        assertEquals("worn only: 0.050 mm to 0.150 mm", worn.getTextContent());
    }

    /** By hand: 0.25 of 14.8 mm is 1.69 %, twice over; the rest is 96.62 %. */
    @Test
    void hasALegendWithTheShares() throws Exception {
        Document svg = parse(strip("mm", "Slide"));
        assertEquals(List.of("clean: 1.69 % of the travel", "worn only: 1.69 % of the travel",
                "not reached: 96.62 % of the travel"), texts(svg, "legend"));
    }

    @Test
    void numbersItsScaleInTheUnitOfTheFile() throws Exception {
        assertEquals(List.of("−4", "−2", "0", "2", "4", "6", "8", "mm"), texts(parse(strip("mm", "Slide")), "scale"));
        // −4.9 to 9.9 mm is −0.193 to 0.390 in.
        assertEquals(List.of("−0.15", "−0.10", "−0.05", "0.00", "0.05", "0.10", "0.15", "0.20", "0.25", "0.30", "0.35", "in"),
                texts(parse(strip("in", "Slide")), "scale"));
    }

    @Test
    void isDrawnInMillimetresAndTheSameOnEveryRun() throws Exception {
        String strip = strip("mm", "Slide");
        Element root = parse(strip).getDocumentElement();
        assertEquals("297.0000mm", root.getAttribute("width"));
        assertEquals("0 0 297.0000 63.0000", root.getAttribute("viewBox"));
        assertEquals(strip, strip("mm", "Slide"));
    }

    @Test
    void showsAnyTitleAsItIsAndNeverAsMarks() throws Exception {
        String title = "<script>\"Fence\" & 'rack' %s";
        Document svg = parse(strip("mm", title + "\u0001"));
        assertEquals(title + "\uFFFD", svg.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(0, svg.getElementsByTagName("script").getLength());
    }

    private String strip(String unit, String title) throws Exception {
        AxisSpec axis = SmallStack.axis(folder, unit);
        return StripSvg.of(title, axis.scale(), SmallStack.coverage(axis, "0.05 mm")).orElseThrow();
    }

    private static Document parse(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    private static List<Element> stretches(Document svg) {
        return elements(svg, "rect").stream().filter(rect -> rect.hasAttribute("class")).toList();
    }

    private static List<String> texts(Document svg, String group) {
        return elements(svg, "text").stream()
                .filter(text -> ((Element) text.getParentNode()).getAttribute("id").equals(group))
                .map(Element::getTextContent).toList();
    }

    private static List<Element> elements(Document svg, String name) {
        NodeList nodes = svg.getElementsByTagName(name);
        return new ArrayList<>(IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList());
    }

    private static double number(Element element, String attribute) {
        return Double.parseDouble(element.getAttribute(attribute));
    }
}
