// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The picture of the coverage in the README, which is what the command there draws. {@code -Dpage.renew=true} renews it. */
class PictureTest {
    private static final Path HELP = Path.of("../../bundles/pitchstack.help");
    private static final Path PICTURE = HELP.resolve("pictures/coverage.svg");

    @TempDir
    private Path folder;
    private Path drawn;

    @BeforeEach
    void draw() {
        drawn = folder.resolve("strip.svg");
        assertEquals(1, draw(drawn).code());
    }

    private static CommandRun draw(Path to) {
        return CommandRun.of("coverage", HELP.resolve("examples/cross-cut-fence.pitchstack").toString(), "--tolerance", "0.005in",
                "--bar", "Rack:base:100-101", "--out", to.toString());
    }

    @Test
    void theReadmeShowsWhatTheCommandDraws() throws Exception {
        if (Boolean.getBoolean("page.renew")) {
            Files.copy(drawn, PICTURE, StandardCopyOption.REPLACE_EXISTING);
            return;
        }
        assertEquals(Files.readString(PICTURE), Files.readString(drawn));
    }

    @Test
    void isTheSameOnEveryRun() throws Exception {
        Path again = folder.resolve("again.svg");
        draw(again);
        assertEquals(Files.readString(drawn), Files.readString(again));
    }

    /** To within half a hundredth of an inch, neighbouring hundredths that are only reached over worn teeth are one stretch. */
    private static long wornStretches() {
        Set<Long> worn = new TreeSet<>();
        for (int a = 77; a <= 101; a++) {
            for (int b = -12; b <= 12; b++) {
                worn.add(25L * a + 24L * b);
            }
        }
        return worn.stream().filter(hundredth -> !worn.contains(hundredth - 1)).count();
    }

    @Test
    void isWellFormedAndBarsTurnWornStretchesIntoGaps() throws Exception {
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(drawn.toFile());
        List<Element> strips = elements(svg, "g").stream().filter(g -> g.getAttribute("class").equals("travel")).toList();
        assertEquals(2, strips.size());
        assertEquals(wornStretches(), count(strips.get(0), "worn"));
        assertEquals(wornStretches(), count(strips.get(1), "not"));
        assertTrue(Files.readString(Path.of("../../README.md")).contains(" with them barred, " + wornStretches() + " gaps"));
        assertEquals(0, count(strips.get(0), "not"));
        assertEquals(0, count(strips.get(1), "worn"));
        List<String> texts = elements(svg, "text").stream().map(Element::getTextContent).toList();
        assertTrue(texts.containsAll(List.of("now", "supposed: base teeth 100 to 101 of “Rack” barred", "0", "90", "in")),
                texts.toString());
    }

    private static long count(Element strip, String kind) {
        NodeList rects = strip.getElementsByTagName("rect");
        return IntStream.range(0, rects.getLength()).mapToObj(i -> (Element) rects.item(i))
                .filter(rect -> rect.getAttribute("class").equals(kind)).count();
    }

    private static List<Element> elements(Document svg, String name) {
        NodeList nodes = svg.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength()).mapToObj(i -> (Element) nodes.item(i)).toList();
    }
}
