// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What worn or barred teeth would cost. On stages of 5 mm and 4.9 mm, where a release costs 4 s and a tooth 1 s, A is reached
 * by 5.0 mm, one tooth of the rack, for 5 s, or by 5.1 mm, two teeth forward and one back, for 11 s; B only by the former.
 * Base tooth 1 of the rack lies under the rider of 20 teeth at the indices from 1 − 19 = −18 to 1, but not at 2.
 */
class WhatIfTest {
    private static final String A_AND_B = "name;position;tolerance\nA;5,05;0,05\nB;5;0\n";

    @TempDir
    private Path folder;

    /** As in CoverageTest; the three stretches over worn teeth become gaps, those at both sides of them among others. */
    @Test
    void tellsWhatOfTheTravelIsLost() throws Exception {
        CommandRun run = coverage(CoverageTest.SIX_POSITIONS, "--tolerance", "0.05mm", "--bar", "Rack:base:1");
        List<String> lines = run.lines();
        List<String> supposed = lines.subList(lines.indexOf("Supposed: base tooth 1 of “Rack” barred"), lines.size());
        assertEquals(List.of(
                "Supposed: base tooth 1 of “Rack” barred",
                "Clean: 1.69 % of the travel",
                "Worn only: 0 % of the travel",
                "Not reached: 98.31 % of the travel",
                "Gaps: 3, the largest 4.950 mm long, from 4.950 mm to 9.900 mm",
                "Finest step everywhere: 4.900 mm",
                "Tolerance that leaves no gap: 5.000 mm",
                "Lost: 1.69 % of the travel, in 3 stretches, the longest from 0.050 mm to 0.150 mm",
                "Worn only from then on: nothing"), supposed);
        assertEquals(1, run.code());
    }

    @Test
    void tellsWhatIsReachedOnlyOverWornTeethFromThenOn() throws Exception {
        JsonNode json = json(CoverageTest.SIX_POSITIONS, "--tolerance", "0.05mm", "--wear", "rack:base:0-1");
        assertEquals("null", json.get("supposed").get("targets").toString());
        assertEquals(0.25 / 14.8, json.get("clean").doubleValue(), 1e-9);
        assertEquals(0, json.get("supposed").get("clean").doubleValue());
        assertEquals(0.25 / 14.8, json.get("supposed").get("newlyWornOnly").get("share").doubleValue(), 1e-9);
        assertEquals(3, json.get("supposed").get("newlyWornOnly").get("stretches").intValue());
        assertEquals(0, json.get("supposed").get("lost").get("stretches").intValue());
        assertEquals("{\"stage\":\"Rack\",\"row\":\"base\",\"first\":0,\"last\":1,\"wear\":\"worn\"}",
                json.get("supposed").get("marks").get(0).toString());
    }

    @Test
    void comparesTheEffortOfWhatIsReachedBothTimes() throws Exception {
        CommandRun run = coverage(StackTexts.COMMON_PRACTICE, "--bar", "1:base:1", "--targets", list(A_AND_B));
        List<String> lines = run.lines();
        assertEquals(List.of("Targets, each from where the stages stand: 2 of 2 reached now, 1 then", "Lost: “B”, 5.000 mm",
                "Effort of those reached both times: 5 s now, 11 s then, 6 s more"),
                lines.subList(lines.size() - 3, lines.size()));
    }

    /** From the start, A and B are 5 s each now; then A is 5.1 mm for 11 s, and B stays where it is. */
    @Test
    void namesTheTargetsThatWouldStandOnWornTeeth() throws Exception {
        JsonNode targets = json(StackTexts.COMMON_PRACTICE, "--wear", "Rack:base:1", "--targets", list(A_AND_B + "C;far;0\n"))
                .get("supposed").get("targets");
        assertEquals(2, targets.get("count").intValue());
        assertEquals(2, targets.get("reached").intValue());
        assertEquals(0, targets.get("lost").size());
        assertEquals("[{\"name\":\"B\",\"target\":\"5\"}]", targets.get("newlyOverWorn").toString());
        assertEquals(5 + 5, targets.get("effortSeconds").intValue());
        assertEquals(11 + 5, targets.get("supposedEffortSeconds").intValue());
        assertTrue(targets.get("unread").get(0).textValue().startsWith("Line 4: “far” is not a length"), targets.toString());
    }

    @Test
    void leavesNothingWhereEveryToothIsBarred() throws Exception {
        CommandRun run = coverage(StackTexts.COMMON_PRACTICE, "--bar", "Fine:rider:0-19", "--targets", list(A_AND_B));
        assertEquals(1, run.code());
        assertTrue(run.lines().contains("Targets, each from where the stages stand: 2 of 2 reached now, 0 then"), run.out());
        assertTrue(run.lines().contains("Lost: “A”, 5.050 mm; “B”, 5.000 mm"), run.out());
        assertFalse(run.out().contains("Effort"), run.out());
    }

    @Test
    void answersForWhatIsSupposedAndLeavesTheFileAsItIs() throws Exception {
        String file = StackTexts.write(folder, StackTexts.COMMON_PRACTICE);
        assertEquals(0, CommandRun.of("coverage", file, "--step", "0.1mm", "--tolerance", "5mm").code());
        assertEquals(1, CommandRun.of("coverage", file, "--step", "0.1mm", "--tolerance", "5mm", "--bar", "Rack:base:0-99").code());
        assertEquals(StackTexts.COMMON_PRACTICE, Files.readString(Path.of(file)));
    }

    @Test
    void writesBothIntoOneTableAndOneDrawing() throws Exception {
        Path csv = folder.resolve("gaps.csv");
        coverage(CoverageTest.SIX_POSITIONS, "--tolerance", "0.05", "--bar", "Rack:base:1", "--out", csv.toString());
        List<String> lines = Files.readAllLines(csv);
        assertEquals("from (mm),to (mm),length (mm),reached,supposed", lines.get(0));
        assertEquals("-4.9,-4.85,0.05,clean,clean", lines.get(1));
        assertEquals("0.050000000001,0.15,0.099999999999,worn only,not reached", lines.get(4));
        Path svg = folder.resolve("strip.svg");
        coverage(CoverageTest.SIX_POSITIONS, "--tolerance", "0.05", "--bar", "Rack:base:1", "--out", svg.toString());
        assertTrue(Files.readString(svg).contains(">supposed: base tooth 1 of “Rack” barred</text>"));
    }

    private String list(String text) throws Exception {
        return Files.writeString(folder.resolve("list.csv"), text).toString();
    }

    private JsonNode json(String stack, String... options) throws Exception {
        return new ObjectMapper().readTree(
                coverage(stack, Stream.concat(Stream.of(options), Stream.of("--json")).toArray(String[]::new)).out());
    }

    private CommandRun coverage(String stack, String... options) throws Exception {
        String file = StackTexts.write(folder, stack);
        return CommandRun.of(Stream.concat(Stream.of("coverage", file), Stream.of(options)).toArray(String[]::new));
    }
}
