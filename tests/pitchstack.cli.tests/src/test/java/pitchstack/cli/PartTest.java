// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PartTest {
    private static final String ROW = " faceWidth=\"10 mm\" bodyThickness=\"14 mm\" numberEvery=\"5\"/>";
    /** A bought rack under a printed adapter, and a printed pair; the printer makes x 0.2 % too large, y 0.1 % too small. */
    private static final String STACK = StackTexts.positioner("mm", "<printSetups name=\"bed\">"
            + "<spans drawn=\"100 mm\" measured=\"100.2 mm\"/><spans direction=\"y\" drawn=\"100 mm\" measured=\"99.9 mm\"/>"
            + "</printSetups>" + StackTexts.axis("Slide", "linear",
                    "<stages name=\"Rack\" pitch=\"5 mm\"><baseRow teeth=\"100\"" + ROW + "<riderRow teeth=\"20\" printSetup=\"bed\""
                    + ROW + "<toothForm profile=\"ISO 53 A\"/></stages>"
                    + "<stages name=\"Fine\" source=\"printed\" pitch=\"4.9 mm\"><baseRow teeth=\"40\" printSetup=\"bed\"" + ROW
                    + "<riderRow teeth=\"20\"/><toothForm profile=\"ISO 53 B\" slot=\"1.2 mm\"/></stages>"));

    @TempDir
    private Path folder;
    private String stack;

    @BeforeEach
    void write() throws Exception {
        Path file = folder.resolve("stack.pitchstack");
        Files.writeString(file, STACK);
        stack = file.toString();
    }

    private String out(String name) {
        return folder.resolve(name).toString();
    }

    private JsonNode json(String... arguments) throws Exception {
        CommandRun run = CommandRun.of(arguments);
        assertEquals("", run.err());
        assertEquals(0, run.code());
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void namesWhatWasWritten() throws Exception {
        JsonNode answer = json("part", stack, "--stage", "Rack", "--out", out("adapter.3mf"), "--json");
        JsonNode written = answer.get("written");
        assertEquals(out("adapter.3mf"), written.get("file").asText());
        assertEquals(Files.size(folder.resolve("adapter.3mf")), written.get("bytes").asLong());
        assertEquals("mm", written.get("unit").asText());
        // Of a bought stage the printed row alone: 20 teeth at 5 mm, divided by 1.002.
        JsonNode rows = answer.get("rows");
        assertEquals(1, rows.size());
        JsonNode row = rows.get(0);
        assertEquals("rider", row.get("row").asText());
        assertFalse(row.get("reference").asBoolean());
        assertEquals(1 / 1.002, row.get("factorX").asDouble(), 1e-9);
        assertEquals(1 / 0.999, row.get("factorY").asDouble(), 1e-9);
        assertEquals(100 / 1.002, written.get("size").get(0).asDouble(), 1e-6);
    }

    @Test
    void aSetIsEveryPrintedRowInOneDirection() throws Exception {
        JsonNode rows = json("part", stack, "--set", "--out", out("set.stl"), "--json").get("rows");
        assertEquals(3, rows.size());
        double y = -1;
        for (int i = 0; i < rows.size(); i++) {
            assertTrue(rows.get(i).get("y").asDouble() > y);
            y = rows.get(i).get("y").asDouble();
        }
    }

    @Test
    void aBoughtRowComesOutForReferenceOnlyAndAsDrawn() throws Exception {
        JsonNode answer = json("part", stack, "--stage", "rack", "--row", "base", "--out", out("rack.dxf"), "--json");
        JsonNode row = answer.get("rows").get(0);
        assertTrue(row.get("reference").asBoolean());
        assertEquals(1, row.get("factorX").asDouble());
        assertTrue(Files.readString(folder.resolve("rack.dxf")).contains("Rack, base row (bought: for reference only)"));
    }

    @Test
    void saysWhatThePrinterWillNotMakeAndWhatTheFileLeavesOpen() {
        CommandRun run = CommandRun.of("part", stack, "--stage", "Fine", "--out", out("fine.3mf"));
        // The tip of ISO 53 at 4.9 mm is 4.9/π · 0.842856 = 1.3146 mm wide, and the slot leaves 0.1146 mm in two leaves.
        assertTrue(run.out().contains("Each leaf beside the slot is 0.06 mm wide, less than the 0.40 mm"), run.out());
        assertTrue(run.out().contains("Fine, rider row: The file gives no face width; 15.60 mm is taken."), run.out());
        assertTrue(run.out().contains("never a guard"), run.out());
    }

    @Test
    void theCouponComesWithItsMeasuringPlan() throws Exception {
        JsonNode answer = json("part", stack, "--coupon", "--out", out("coupon.3mf"), "--json");
        JsonNode last = answer.get("spans").get(5);
        assertEquals("y", last.get("direction").asText());
        assertEquals(100, last.get("drawn").asDouble());
        assertEquals(106, last.get("over").asDouble());
        json("part", stack, "--coupon", "--out", out("coupon.csv"), "--json");
        assertEquals(7, Files.readAllLines(folder.resolve("coupon.csv")).size());
    }

    @Test
    void theSameStackGivesTheSameBytes() throws Exception {
        for (String ending : new String[] {"3mf", "stl", "dxf"}) {
            CommandRun.of("part", stack, "--set", "--out", out("one." + ending));
            CommandRun.of("part", stack, "--set", "--out", out("two." + ending));
            assertArrayEquals(Files.readAllBytes(folder.resolve("one." + ending)),
                    Files.readAllBytes(folder.resolve("two." + ending)));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"3mf", "stl"})
    void stoppedFromTheKeyboardItLeavesNoFile(String ending) {
        StringWriter answer = new StringWriter();
        StringWriter err = new StringWriter();
        Watch stopped = new Watch(new PrintWriter(err), System::nanoTime);
        stopped.cancel();
        String[] arguments = {"part", stack, "--set", "--out", out("set." + ending)};
        assertEquals(130, Main.run(arguments, new PrintWriter(answer), new PrintWriter(err), stopped));
        assertEquals("", answer.toString());
        assertEquals("pitchstack: Stopped before the work was done; no answer, and no file was written.\n", err.toString());
        assertFalse(Files.exists(folder.resolve("set." + ending)));
    }

    @Test
    void replacesAFileOnlyWhenTold() throws Exception {
        Path there = Files.writeString(folder.resolve("there.stl"), "old");
        CommandRun run = CommandRun.of("part", stack, "--set", "--out", there.toString());
        assertEquals(2, run.code());
        assertEquals("old", Files.readString(there));
        assertEquals(0, CommandRun.of("part", stack, "--set", "--out", there.toString(), "--force").code());
        assertTrue(Files.size(there) > 1000);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--stage Rack --out a.step | --out: “a.step” must end with .3mf or .stl or .dxf, which tells the format.",
        "--stage Rack | --out is missing: give the name of the file to write, which ends with .3mf or .stl or .dxf.",
        "--out a.3mf | Say what to make: a stage with --stage NAME, all printed rows with --set, or a coupon with --coupon.",
        "--set --coupon --out a.3mf | --stage, --set and --coupon exclude each other; give one of them.",
        "--set --row base --out a.3mf | --row chooses a row of a stage; give the stage with --stage NAME.",
        "--stage Rack --row top --out a.3mf | --row: “top” is no row; write base or rider.",
        "--stage Coarse --out a.3mf | --stage: axis “Slide” has no stage “Coarse”; it has “Rack”, “Fine”.",
        "--coupon --out a.dxf | --out: “a.dxf” must end with .3mf or .stl or .csv, which tells the format.",
    })
    void badInputIsOneSentence(String arguments, String sentence) {
        CommandRun run = CommandRun.of(("part " + stack + " " + arguments).split(" "));
        assertEquals("pitchstack: " + sentence + "\n", run.err());
        assertEquals(2, run.code());
        assertEquals("", run.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "slot=\"1.2 mm\" | slot=\"2 mm\" | The base row of stage “Fine” cannot be made: A slot of 2 mm is as wide as the tip,"
            + " which is 1.315 mm; make the slot narrower.",
        "slot=\"1.2 mm\" | pattern=\"herringbone\" | The base row of stage “Fine” cannot be made: The herringbone angle is"
            + " 0.0°; above 0° and up to 60° is allowed.",
        "measured=\"99.9 mm\" | measured=\"9.99 mm\" | The rider row of stage “Rack” cannot be made: The spans measured on"
            + " print set-up “bed” differ by 90 % from those drawn; less than 10 % is allowed, so correct the spans.",
        "bodyThickness=\"14 mm\" | bodyThickness=\"-1 mm\" | The rider row of stage “Rack” cannot be made: The body thickness"
            + " is -1 mm; it must be above 0.",
        "teeth=\"40\" | teeth=\"0\" | The base row of stage “Fine” cannot be made: it has no teeth; give it some.",
    })
    void aRowThatCannotBeMadeIsNotWritten(String old, String wrong, String sentence) throws Exception {
        Files.writeString(folder.resolve("wrong.pitchstack"), STACK.replace(old, wrong));
        CommandRun run = CommandRun.of("part", out("wrong.pitchstack"), "--set", "--out", out("wrong.3mf"));
        assertEquals("pitchstack: " + sentence + "\n", run.err());
        assertEquals(2, run.code());
        assertFalse(Files.exists(folder.resolve("wrong.3mf")));
    }

    @Test
    void aRingIsRefusedSinceTheFileHasNoRadius() throws Exception {
        Path ring = Files.writeString(folder.resolve("ring.pitchstack"), StackTexts.ROTARY);
        CommandRun run = CommandRun.of("part", ring.toString(), "--stage", "Ring", "--out", out("ring.3mf"));
        assertEquals("pitchstack: The base row of stage “Ring” cannot be made: its axis turns, and the file gives no radius to"
                + " draw a ring by; parts are made of linear axes only.\n", run.err());
    }
}
