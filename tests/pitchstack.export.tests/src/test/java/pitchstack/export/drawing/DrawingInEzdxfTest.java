// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import pitchstack.export.dxf.Ezdxf;

/** The DXF of drawings, opened by ezdxf, a program that others wrote, and compared with the drawings themselves. */
class DrawingInEzdxfTest {
    /** Of circles ezdxf takes the reach from a chain of chords. */
    private static final double SAG_MM = 0.002;

    static Stream<String> examples() {
        return Devices.EXAMPLES.stream();
    }

    private static String dxf(Drawing drawing) {
        return DxfDrawing.of(drawing, Devices.LETTERS);
    }

    @ParameterizedTest
    @MethodSource("examples")
    void findsNoFaultAndEveryMarkOnItsLayer(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        Ezdxf read = Ezdxf.of(dxf(drawing));
        assertEquals(List.of(), read.faults());
        assertEquals("AC1009", read.version());
        assertEquals(drawing.parts().stream().flatMap(part -> part.marks().stream()
                .map(mark -> entity(mark, part.name().equals("check-bar")))).toList(), read.entities());
        assertTrue(read.layers().containsAll(List.of("OUTLINE CONTINUOUS", "HIDDEN DASHED", "CHAIN CENTER", "PHANTOM PHANTOM",
                "TEXT CONTINUOUS", "CHECK_BAR CONTINUOUS")), read.layers().toString());
    }

    private static String entity(Mark mark, boolean isBar) {
        if (mark instanceof Mark.Text) {
            return "TEXT TEXT";
        } else if (mark instanceof Mark.Area) {
            return "SOLID " + (isBar ? "CHECK_BAR" : "FILLED");
        } else if (mark instanceof Mark.Line line) {
            return "LINE " + (isBar ? "CHECK_BAR" : line.pen());
        } else if (mark instanceof Mark.Path path) {
            return "POLYLINE " + (isBar ? "CHECK_BAR" : path.pen());
        } else if (mark instanceof Mark.Arc arc) {
            return "ARC " + arc.pen();
        }
        return "CIRCLE " + ((Mark.Circle) mark).pen();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void readsEveryTextInItsSizeAndDirection(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        Ezdxf read = Ezdxf.of(dxf(drawing));
        assertEquals(Devices.texts(drawing).stream().map(DrawingInEzdxfTest::inAscii).toList(), read.texts());
        assertEquals(drawing.marks().stream().filter(Mark.Text.class::isInstance).map(Mark.Text.class::cast)
                .map(text -> text.heightMm() + " " + (text.upwards() ? 90.0 : 0.0)).toList(), read.letters());
    }

    /** Signs for which ASCII has one that serves as well are written as that; all others come back as they were. */
    private static String inAscii(String text) {
        return text.replaceAll("[−–]", "-").replaceAll("[“”″]", "\"").replaceAll("[’′]", "'").replace('×', 'x')
                .replace('·', '.').replaceAll("[µμ]", "u");
    }

    @ParameterizedTest
    @MethodSource("examples")
    void reachesAsFarAsTheDrawingAndItsSheet(String example) throws Exception {
        Drawing drawing = Devices.drawn(Devices.example(example));
        Ezdxf read = Ezdxf.of(dxf(drawing));
        double[] reach = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        drawing.marks().stream().flatMap(DrawingInEzdxfTest::ends).forEach(point -> {
            reach[0] = Math.min(reach[0], point.x());
            reach[1] = Math.min(reach[1], point.y());
            reach[2] = Math.max(reach[2], point.x());
            reach[3] = Math.max(reach[3], point.y());
        });
        assertArrayEquals(reach, read.reach("all"), SAG_MM);
        assertArrayEquals(read.reach("all"), read.stated(), SAG_MM);
        // ISO 5457: centring marks reach to the edges of the trimmed sheet; A3 is 420 mm and A2 594 mm wide (ISO 216).
        double[] sheet = drawing.sheet() == SheetSize.A3 ? new double[] {0, 0, 420, 297} : new double[] {0, 0, 594, 420};
        assertArrayEquals(sheet, read.reach("FRAME"), 1e-9);
    }

    private static Stream<Point> ends(Mark mark) {
        return mark instanceof Mark.Line line ? Stream.of(line.from(), line.to())
                : mark instanceof Mark.Path path ? path.points().stream()
                : mark instanceof Mark.Area area ? area.corners().stream()
                : mark instanceof Mark.Circle circle ? Stream.of(circle.centre().moved(circle.radius(), circle.radius()),
                        circle.centre().moved(-circle.radius(), -circle.radius())) : Stream.empty();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void theCheckBarIsAHundredMillimetresLong(String example) throws Exception {
        double[] reach = Ezdxf.of(dxf(Devices.drawn(Devices.example(example)))).reach("CHECK_BAR");
        assertEquals(100, reach[2] - reach[0], 1e-8);
    }

    /** 408 · 1/4 in = 102 in, 23 · 1/4 in = 5 3/4 in; 48 · 1°01' = 48°48'. */
    @Test
    void readsDimensionsThatWereWorkedOutByHand() throws Exception {
        List<String> fence = Ezdxf.of(dxf(Devices.drawn(Devices.example("cross-cut-fence")))).texts();
        assertTrue(fence.containsAll(List.of("408 teeth: 102.000", "travel 96.000 (0 to 96.000)")), fence.toString());
        assertTrue(fence.stream().anyMatch(text -> text.startsWith("23 x .250 = 5.750")), fence.toString());
        List<String> table = Ezdxf.of(dxf(Devices.drawn(Devices.example("index-table")))).texts();
        assertTrue(table.contains("48 teeth: 48°48'"), table.toString());
    }

    @Test
    void ezdxfDoesFindALineTypeThatIsNotThereAndRefusesACutFile() throws Exception {
        String dxf = dxf(Devices.drawn(Devices.example("ram-shim")));
        assertFalse(Ezdxf.of(dxf.replace("LINE\r\n8\r\nCHAIN\r\n", "LINE\r\n8\r\nCHAIN\r\n6\r\nNOTHING\r\n")).faults().isEmpty());
        assertThrows(AssertionError.class, () -> Ezdxf.of(dxf.substring(0, dxf.lastIndexOf("ENDSEC"))));
    }
}
