// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.export.drawing.DrawingAnswer.Refused;
import pitchstack.model.Positioner;

/** What stands on the drawings; every number is worked out by hand beside it. */
class FixtureDrawingTest {
    @TempDir
    Path temporary;

    private static void assertSays(Drawing drawing, String... texts) {
        List<String> all = Devices.texts(drawing);
        for (String text : texts) {
            assertTrue(all.contains(text), "“" + text + "” is missing in " + all);
        }
    }

    /** 408 · 1/4 in = 102 in; the rider's 24 teeth make 6 in, its middle stands 12 · 1/4 in behind the first base tooth. */
    @Test
    void dimensionsOfTheFenceAreThoseOfItsRows() throws IOException {
        assertSays(Devices.drawn(Devices.example("cross-cut-fence")), "102.000", "3.000", "travel 96.000 (0 to 96.000)",
                "408 teeth: 102.000", "24 teeth: 6.000", "23 × .250 = 5.750", "24 teeth: 5.760");
    }

    /**
     * 0.002 in shared by 2 stages is 0.001 in. The upper row needs 12 teeth of 24 on 24 and so moves by 12 either way: over 23
     * teeth 0.001 · 23 / 12 = 0.00192 in. The rack is bought, and so carries none.
     */
    @Test
    void pitchesOfPrintedRowsCarryTheirShareOfTheToleranceOfTheAxis() throws IOException {
        Drawing drawing = Devices.drawn(Devices.example("cross-cut-fence"));
        assertSays(drawing, "23 × .240 = 5.520 ±.0019", "23 × .250 = 5.750");
        String texts = String.join(" ", Devices.texts(drawing));
        assertTrue(texts.contains("the tolerance of targets in the file (“Fence” ±.002)"), texts);
        assertTrue(texts.contains("Grades of rows as the file names them: 1 base ISO 1328-1:2013 class 10."), texts);
    }

    /** 0.05 mm of 1 stage at 19 teeth from 0, since one of 12 on 20 must mesh: over 11 teeth 0.05 · 11 / 19 = 0.02894 mm. */
    @Test
    void tolerancesAreRoundedDownAndNeverInvented() throws IOException {
        Positioner device = Devices.small(temporary);
        assertSays(Devices.drawn(device), "11 × 5 = 55");
        assertTrue(String.join(" ", Devices.texts(Devices.drawn(device))).contains("this drawing proposes that class, the file"));
        device.getAxes().get(0).setTolerance("0.05 mm");
        assertSays(Devices.drawn(device), "11 × 5 = 55 ±0.028");
        device.getAxes().get(0).setTolerance("0.001 mm");
        assertSays(Devices.drawn(device), "11 × 5 = 55");
    }

    /** Module 1: π mm a tooth; 204 π = 640.8849 mm, 19 π = 59.6903 mm, 20 π = 62.8319 mm, 10 π = 31.4159 mm. */
    @Test
    void multiplesOfPiAreRoundedOnceAtTheEnd() throws IOException {
        assertSays(Devices.drawn(Devices.example("slide-plate")), "640.8849", "31.4159", "19 × 3.1416 = 59.6903",
                "20 teeth: 62.8319", "travel 600 (0 to 600)");
    }

    /** The first tooth stands 8 + 32/2 = 24 teeth of 4 mm from the datum; 8 teeth are 32 mm. */
    @Test
    void countsTheDatumFromTheFirstBaseTooth() throws IOException {
        assertSays(Devices.drawn(Devices.example("ram-shim")), "96", "8 × 4 = 32", "travel 0.82 (−0.41 to 0.41)",
                "datum: position 0");
    }

    /** 48 · 1°01' = 48°48' and 47 · 1°00'01" = 47°00'47". */
    @Test
    void rotaryAxesAreUnrolledWithAngles() throws IOException {
        assertSays(Devices.drawn(Devices.example("index-table")), "360 teeth: 360°", "48 teeth: 48°48'",
                "47 × 1°00'01\" = 47°00'47\"");
    }

    /** 360° are 180 mm of paper, half a millimetre for a degree. */
    @Test
    void saysThatRotaryAxesAreUnrolledAndMeasuredInDegrees() throws IOException {
        Drawing drawing = Devices.drawn(Devices.example("index-table"));
        assertSays(drawing, "Table: unrolled, lengths in degrees, 1° drawn as 0.5 mm", "Degrees, unrolled, in degrees",
                "Minutes, unrolled, in degrees", "Seconds, unrolled, in degrees", "°");
        String texts = String.join(" ", Devices.texts(drawing));
        assertTrue(texts.contains("lengths along them are degrees of turn, not lengths on the part."), texts);
        double[] base = drawing.parts().stream().filter(part -> part.name().equals("view-1"))
                .flatMap(part -> part.marks().stream()).filter(mark -> mark instanceof Mark.Path path && path.pen() == Pen.OUTLINE)
                .flatMap(mark -> ((Mark.Path) mark).points().stream()).mapToDouble(Point::x).sorted().toArray();
        assertTrue(Math.abs(base[base.length - 1] - base[0] - 180) < 1, base[0] + " to " + base[base.length - 1]);
    }

    /** ISO 53 type A, p = 2.5 π mm, so m = 2.5 mm: depth 2.25 m = 5.625, tip land 0.842856 m = 2.107, half pitch 3.927. */
    @Test
    void sectionShowsTheToothFormOfTheStandard() throws IOException {
        Positioner device = Devices.device(temporary, "", "", Devices.stage("Rack", "module 2.5", 30, 12)
                .replace("</stages>", "<toothForm profile=\"ISO 53 A\"/></stages>"));
        assertSays(Devices.drawn(device), "5.625", "2.107", "3.927", "20°", "ISO 53 type A, fillet R 0.95, face width");
    }

    @Test
    void tableGivesThePitchInItsSystemAndTheFittedCorrection() throws IOException {
        Positioner device = Devices.device(temporary, "", "", Devices.stage("Rack", "24 DP", 30, 12)
                .replace("<stages ", "<stages correctionPpm=\"-120\" correctionUncertaintyPpm=\"30\" "));
        // π / 24 in = 3.324852 mm (common gear arithmetic).
        String texts = String.join(" ", Devices.texts(Devices.drawn(device)));
        assertTrue(texts.contains("24 DP (diametral pitch): 3.3249"), texts);
        assertTrue(texts.contains("−120 ± 30 ppm (1 σ), date not stated"), texts);
    }

    @Test
    void saysWhatToDoWhereTheSheetIsTooSmall() throws IOException {
        Refused refused = assertInstanceOf(Refused.class,
                Devices.draw(Devices.example("slide-plate"), Optional.of(SheetSize.A4)));
        assertTrue(refused.sentence().matches("This stack does not fit on A4; A[12] is large enough\\."), refused.sentence());
    }

    @Test
    void refusesAToothThatCannotBeMade() throws IOException {
        Positioner device = Devices.device(temporary, "", "", Devices.stage("Rack", "5 mm", 30, 12)
                .replace("</stages>", "<toothForm depth=\"9 mm\" rootRelief=\"0.4 mm\"/></stages>"));
        Refused refused = assertInstanceOf(Refused.class, Devices.draw(device, Optional.empty()));
        assertTrue(refused.sentence().startsWith("“Rack” cannot be drawn: Flanks at 20° meet"), refused.sentence());
    }

    @Test
    void refusesASizeThatCannotBeRead() throws IOException {
        Positioner device = Devices.device(temporary, "", "", Devices.stage("Rack", "5 mm", 30, 12)
                .replace("printSetup=\"bed\"/>", "bodyThickness=\"thick\"/>"));
        Refused refused = assertInstanceOf(Refused.class, Devices.draw(device, Optional.empty()));
        assertTrue(refused.sentence().startsWith("“Rack” cannot be drawn: The body thickness cannot be read: “thick”"),
                refused.sentence());
    }

    /**
     * A rider of 24 teeth of 5 mm is 120 mm long: with 0.8 mm at either end, room for three holes of 6 mm 50 mm apart, since
     * (118.4 − 6) / 50 is 2.2. The body is engraved above them, so they stand two lines of 0.4 mm and half their width from
     * its back: 0.8 + 3 = 3.8 mm.
     */
    @Test
    void holesStandWhereThePartHasThem() throws IOException {
        Positioner device = Devices.clamped(temporary, "holes");
        Drawing drawing = Devices.drawn(device);
        String texts = String.join(" ", Devices.texts(drawing));
        assertTrue(texts.contains("1 rider: 3 holes Ø6, 50 apart, middle 3.8 from the back"), texts);
        List<Mark.Circle> all = drawing.parts().stream().filter(part -> part.name().equals("view-1"))
                .flatMap(part -> part.marks().stream()).filter(mark -> mark instanceof Mark.Circle circle
                        && circle.pen() == Pen.OUTLINE).map(Mark.Circle.class::cast).toList();
        // The base of 300 mm has (298.4 − 5.5) / 40 + 1 = 8 holes of the usual size.
        assertEquals(8 + 3, all.size());
        List<Mark.Circle> holes = all.subList(8, 11);
        double scale = holes.get(0).radius() / 3;
        assertEquals(50 * scale, holes.get(1).centre().x() - holes.get(0).centre().x(), 1e-9);
        assertEquals(50 * scale, holes.get(2).centre().x() - holes.get(1).centre().x(), 1e-9);
    }

    /** A slot is twice as long as wide; its two ends are arcs of half its width. */
    @Test
    void slotsHaveRoundEnds() throws IOException {
        Drawing drawing = Devices.drawn(Devices.clamped(temporary, "slots"));
        String texts = String.join(" ", Devices.texts(drawing));
        assertTrue(texts.contains("1 rider: 3 slots 6 × 12, 50 apart, middle 3.8 from the back"), texts);
        assertEquals(6, drawing.marks().stream().filter(mark -> mark instanceof Mark.Arc arc && arc.pen() == Pen.OUTLINE).count());
    }

    @Test
    void refusesAHoleThatHasNoRoom() throws IOException {
        Positioner device = Devices.clamped(temporary, "holes");
        device.getAxes().get(0).getStages().get(0).getRiderRow().setClampDiameter("13 mm");
        Refused refused = assertInstanceOf(Refused.class, Devices.draw(device, Optional.empty()));
        assertTrue(refused.sentence().startsWith("“Rack” cannot be drawn: A clamping hole of 13"), refused.sentence());
    }

    /** 3/4 in on every row of the fence; 12 mm on the rings, whose other lengths are degrees. */
    @Test
    void sectionsSayHowWideTheFaceIs() throws IOException {
        String fence = String.join(" ", Devices.texts(Devices.drawn(Devices.example("cross-cut-fence"))));
        assertTrue(fence.contains("face width .750."), fence);
        String table = String.join(" ", Devices.texts(Devices.drawn(Devices.example("index-table"))));
        assertTrue(table.contains("face width 12 mm."), table);
    }

    @Test
    void cautionsStandOnEveryDrawingOnce() throws IOException {
        for (String example : Devices.EXAMPLES) {
            String texts = String.join(" ", Devices.texts(Devices.drawn(Devices.example(example))));
            for (String caution : List.of("A printed stage is a positioning aid: never a guard, and never in the load path.",
                    "Isolate and lock out the machine before you reach in or move a stage.",
                    "The machine maker's manual, local codes and licensed practice come first")) {
                assertEquals(texts.indexOf(caution), texts.lastIndexOf(caution), caution);
                assertTrue(texts.contains(caution), texts);
            }
        }
    }

    /** The number of marks does not grow with the rack: only what is seen is drawn. */
    @Test
    void aRackOfAHundredThousandTeethTakesNoMoreMarksThanOneOfAThousand() throws IOException {
        int some = Devices.drawn(Devices.device(temporary, "", "", Devices.stage("Rack", "5 mm", 1_000, 20))).marks().size();
        int many = Devices.drawn(Devices.device(temporary, "", "", Devices.stage("Rack", "5 mm", 100_000, 20))).marks().size();
        assertTrue(Math.abs(many - some) < 10, some + " and " + many);
    }
}
