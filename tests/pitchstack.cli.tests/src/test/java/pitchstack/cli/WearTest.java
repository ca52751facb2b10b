// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
 * Seatings counted by hand on the six positions of CoverageTest, where a single tooth is engaged. From (0, 0) the list goes
 * to 0.1 mm, (1, −1); 5 mm, (1, 0); 4.9 mm, (0, 1). The rack comes to base tooth 1 and back to 0 and stays in between; the
 * fine stage, which starts at base tooth 1, comes to its base teeth 0, 1 and 2.
 */
class WearTest {
    private static final String LIST = "position\n0.1\n5\n4.9\n";

    @TempDir
    private Path folder;

    @Test
    void countsAToothOnlyWhereItsStageComesToItsPlace() throws Exception {
        JsonNode rows = new ObjectMapper().readTree(wear("--json").out()).get("rows");
        assertEquals(List.of("[1,1]", "[2]", "[1,1,1]", "[3]"),
                Stream.of(0, 1, 2, 3).map(i -> rows.get(i).get("seatings").toString()).toList());
        assertEquals(List.of("Rack base 1", "Rack rider 2", "Fine base 1", "Fine rider 3"), Stream.of(0, 1, 2, 3)
                .map(i -> rows.get(i).get("stage").textValue() + " " + rows.get(i).get("row").textValue() + " "
                        + rows.get(i).get("most").intValue()).toList());
    }

    @Test
    void namesTheTeethThatAreSeatedMost() throws Exception {
        CommandRun run = wear();
        assertEquals(List.of(
                "Test bench, axis “Slide”: 3 stops in the given order",
                "Reached: 3 of 3",
                "Rack, base row of 2 teeth", "Seated most: teeth 0 to 1, once each", "Never seated: none",
                "Rack, rider row of 1 tooth", "Seated most: tooth 0, twice", "Never seated: none",
                "Fine, base row of 3 teeth", "Seated most: teeth 0 to 2, once each", "Never seated: none",
                "Fine, rider row of 1 tooth", "Seated most: tooth 0, 3 times", "Never seated: none"), run.lines());
        assertEquals(0, run.code());
    }

    @Test
    void writesOneRowATooth() throws Exception {
        Path csv = folder.resolve("seatings.csv");
        wear("--out", csv.toString());
        assertEquals(List.of("stage,row,tooth,seatings", "Rack,base,0,1", "Rack,base,1,1", "Rack,rider,0,2", "Fine,base,0,1",
                "Fine,base,1,1", "Fine,base,2,1", "Fine,rider,0,3"), Files.readAllLines(csv));
    }

    @Test
    void endsWithOneWhereAStopIsLeftOut() throws Exception {
        CommandRun run = wear("position\n0.1\n2\n");
        assertEquals(1, run.code());
        assertTrue(run.lines().contains("Reached: 1 of 2"), run.out());
        assertTrue(run.lines().contains("Never seated: 1 tooth"), run.out());
    }

    /** The rack goes to 1, back to 0, to 1 and back; the fine stage to −1 and back to 0, stays, and to 1 and back. */
    @Test
    void goesBackAfterEachStopThatIsPlannedFromTheStart() throws Exception {
        JsonNode rows = new ObjectMapper().readTree(wear("--order", "from-start", "--json").out()).get("rows");
        assertEquals("[2,2]", rows.get(0).get("seatings").toString());
        assertEquals("[1,2,1]", rows.get(2).get("seatings").toString());
    }

    private CommandRun wear(String... options) throws Exception {
        boolean listed = options.length == 1 && options[0].startsWith("position");
        Path list = Files.writeString(folder.resolve("list.csv"), listed ? options[0] : LIST);
        String file = StackTexts.write(folder, CoverageTest.SIX_POSITIONS);
        return CommandRun.of(Stream.concat(Stream.of("wear", file, "--targets", list.toString()),
                listed ? Stream.empty() : Stream.of(options)).toArray(String[]::new));
    }
}
