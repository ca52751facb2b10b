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
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

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

    /**
     * Positions 0.2 mm apart from 0 to 199.8 mm, and 0.05 mm on either side reached: half of the travel clean and half not, in
     * stretches of 0.1 mm, which are 0.13 mm on paper. 257 mm in columns of half a millimetre at the least are 514.
     */
    @Test
    void drawsStretchesThatAreTooThinAsColumnsOfTheirShares() throws Exception {
        AxisSpec axis = SmallStack.rack(folder, "0.2 mm", 1000);
        Document svg = parse(StripSvg.of("Comb", axis.scale(), SmallStack.coverage(axis, "0.05 mm")).orElseThrow());
        List<Element> columns = elements(svg, "g").stream().filter(g -> g.getAttribute("class").equals("mixed")).toList();
        assertEquals(514, columns.size());
        double clean = 0;
        double x = 20;
        for (Element column : columns) {
            NodeList parts = column.getElementsByTagName("rect");
            assertEquals(2, parts.getLength());
            Element lower = (Element) parts.item(0);
            Element upper = (Element) parts.item(1);
            assertEquals(List.of("#7f7f7f", "#e2e2e2"), List.of(lower.getAttribute("fill"), upper.getAttribute("fill")));
            assertEquals(20, number(lower, "height") + number(upper, "height"), 3 * ROUNDING);
            assertEquals(number(lower, "y"), number(upper, "y") + number(upper, "height"), 3 * ROUNDING);
            assertEquals(x, number(lower, "x"), 514 * ROUNDING);
            x += number(lower, "width");
            clean += number(lower, "width") * number(lower, "height");
        }
        assertEquals(277, x, 514 * ROUNDING);
        // 998 stretches of 0.1 mm inside and 0.05 mm at both ends, of 199.8 mm.
        assertEquals((998 * 0.1 + 0.1) / 199.8, clean / (257 * 20), 1e-3);
        assertEquals(4, texts(svg, "legend").size());
        assertEquals(0, stretches(svg).size());
    }

    @Test
    void drawsTwoStripsOfOneTravelAboveOneScale() throws Exception {
        AxisSpec axis = SmallStack.axis(folder, "mm");
        AxisSpec barred = new WearMark(0, WearMark.Row.BASE, new WornRange(new ToothSpan(1, 1), Wear.BARRED)).on(axis);
        Document svg = parse(StripSvg.of("Slide", axis.scale(), SmallStack.coverage(axis, "0.05 mm"),
                SmallStack.coverage(barred, "0.05 mm"), "tooth 1 barred").orElseThrow());
        List<Element> strips = elements(svg, "g").stream().filter(g -> g.getAttribute("class").equals("travel")).toList();
        assertEquals(List.of("now", "supposed: tooth 1 barred"), strips.stream()
                .map(strip -> strip.getElementsByTagName("text").item(0).getTextContent()).toList());
        assertEquals(List.of("clean: 1.69 % now, 1.69 % supposed", "worn only: 1.69 % now, 0 % supposed",
                "not reached: 96.62 % now, 98.31 % supposed"), texts(svg, "legend"));
        assertEquals(List.of("−4", "−2", "0", "2", "4", "6", "8", "mm"), texts(svg, "scale"));
        assertEquals(32, floor(strips.get(1)) - floor(strips.get(0)), ROUNDING);
    }

    private static double floor(Element strip) {
        Element first = (Element) strip.getElementsByTagName("rect").item(0);
        return number(first, "y") + number(first, "height");
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
