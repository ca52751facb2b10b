// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DxfR12Test {
    private static final Layer OUTLINE = new Layer("OUTLINE");
    private static final Layer AXES = new Layer("AXES", 1, LineType.CENTER);

    private static DxfR12 drawing() {
        return new DxfR12(List.of("One plate"), List.of(OUTLINE, AXES));
    }

    @Test
    void readsBackEveryEntityAsItWasDrawn() {
        DxfR12 drawing = drawing();
        drawing.line(AXES, -1, 0, 12.5, 0.001);
        drawing.polyline(OUTLINE, List.of(new Vertex(0, 0, 1), new Vertex(10, 0), new Vertex(10, 5)), true);
        drawing.arc(OUTLINE, 3, 4, 5, 0, 90);
        drawing.circle(OUTLINE, 20, 30, 2.5);
        drawing.text(OUTLINE, 1, 2, 3.5, 90, Anchor.CENTRE, "20 °C ±0.1, Ø5");
        ReadDxf read = new ReadDxf(drawing.text());

        assertEquals(List.of("LINE", "POLYLINE", "VERTEX", "VERTEX", "VERTEX", "SEQEND", "ARC", "CIRCLE", "TEXT"),
                read.entities("ENTITIES").stream().map(ReadDxf.Entity::kind).toList());
        ReadDxf.Entity line = read.entities("ENTITIES").get(0);
        assertEquals("AXES", line.text(8));
        assertEquals(List.of(-1.0, 0.0, 12.5, 0.001), List.of(line.number(10), line.number(20), line.number(11),
                line.number(21)));
        assertEquals(new ReadDxf.Polyline("OUTLINE", true,
                List.of(new Vertex(0, 0, 1), new Vertex(10, 0), new Vertex(10, 5))), read.polylines().get(0));
        ReadDxf.Entity arc = read.entities("ENTITIES").get(6);
        assertEquals(List.of(5.0, 0.0, 90.0), List.of(arc.number(40), arc.number(50), arc.number(51)));
        ReadDxf.Entity text = read.entities("ENTITIES").get(8);
        assertEquals("20 %%dC %%p0.1, %%c5", text.text(1));
        assertEquals(1, text.number(72));
        assertEquals(text.number(10), text.number(11));
    }

    @Test
    void hasTheSectionsAndTablesOfRelease12AndNothingNewer() {
        DxfR12 drawing = drawing();
        drawing.circle(OUTLINE, 20, 30, 2.5);
        ReadDxf read = new ReadDxf(drawing.text());
        assertEquals(List.of("HEADER", "TABLES", "BLOCKS", "ENTITIES"), read.sections());
        assertEquals(new ReadDxf.Pair(0, "EOF"), read.last());
        assertTrue(read.section("HEADER").contains(new ReadDxf.Pair(1, "AC1009")));
        assertEquals(List.of("All lengths are millimetres", "One plate"), read.comments());
        // Subclass markers and handles came with Release 13.
        assertTrue(read.codes().noneMatch(code -> code == 100 || code == 5));
        assertEquals(List.of("OUTLINE", "AXES"), read.entities("TABLES").stream()
                .filter(entity -> entity.kind().equals("LAYER")).map(entity -> entity.text(2)).toList());
    }

    @Test
    void statesHowFarTheDrawingReaches() {
        DxfR12 drawing = drawing();
        drawing.circle(OUTLINE, 20, 30, 2.5);
        drawing.line(OUTLINE, 0, 0, 1, 40);
        List<Double> corners = new ReadDxf(drawing.text()).section("HEADER").stream()
                .filter(pair -> pair.code() == 10 || pair.code() == 20).map(pair -> Double.valueOf(pair.value())).toList();
        assertEquals(List.of(0.0, 0.0, 22.5, 40.0), corners);
    }

    @Test
    void everyLengthHasADecimalPointAndTheTextIsAscii() {
        DxfR12 drawing = drawing();
        drawing.line(OUTLINE, 1, 2, 1e-7, 4);
        drawing.text(OUTLINE, 0, 0, 3, 0, Anchor.LEFT, "Größe – „Täfelchen“ 𝄞");
        String text = drawing.text();
        assertTrue(text.chars().allMatch(c -> c < 0x7F));
        assertTrue(text.contains("\r\n11\r\n0.0000001\r\n"));
        new ReadDxf(text).section("ENTITIES").stream().filter(pair -> pair.code() >= 10 && pair.code() < 60)
                .forEach(pair -> assertTrue(pair.value().matches("-?\\d+\\.\\d+"), pair.value()));
    }

    @ParameterizedTest
    @CsvSource({"a−b,a-b", "100%%,100%%%%%%", "5 µm,5 um", "ü,\\U+00FC"})
    void writesSignsThatRelease12DoesNotKnowInItsOwnWay(String text, String written) {
        DxfR12 drawing = drawing();
        drawing.text(OUTLINE, 0, 0, 3, 0, Anchor.LEFT, text);
        assertEquals(written, new ReadDxf(drawing.text()).entities("ENTITIES").get(0).text(1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "outline", "A B", "A_VERY_LONG_NAME_OF_32_CHARACTERS"})
    void refusesALayerThatRelease12CannotName(String name) {
        assertThrows(IllegalArgumentException.class, () -> new Layer(name));
    }

    @Test
    void refusesALayerThatTheDrawingDoesNotHave() {
        assertThrows(IllegalArgumentException.class, () -> drawing().circle(new Layer("OTHER"), 0, 0, 1));
    }
}
