// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What other programs read, read back by another library and compared with values worked out by hand. */
class PlanJsonTest {
    private static final ObjectMapper READER = new ObjectMapper();
    @TempDir
    private Path folder;

    @Test
    void holdsTheWholeAnswer() throws Exception {
        // 5 mm + (−4.9 mm) = 0.1 mm; from (−1, 2) that is 2 teeth and 3 teeth: 4 + 2 + 4 + 3 = 13 s.
        assertJson("{'reached':true,'unit':'mm','setting':[1,-1],'position':'0.1','error':'0','effortSeconds':13,"
                + "'steps':[{'stage':'Rack','from':-1,'to':1,'kind':'direct'},{'stage':'Fine','from':2,'to':-1,'kind':'direct'}],'worn':[],"
                + "'below':null,'above':null,'reason':null}", 0, StackTexts.COMMON_PRACTICE, "--at", "0.1", "--from", "-1,2");
    }

    @Test
    void hasTwoStepsWhereAStageGoesOneToothFurtherAndComesBack() throws Exception {
        String forward = StackTexts.COMMON_PRACTICE.replace("<axes ", "<axes approach=\"forward\" ");
        // Forward 1: 4 + 1 s; back 1 goes back 2 and forward 1: 4 + 3 s.
        assertJson("{'reached':true,'unit':'mm','setting':[1,-1],'position':'0.1','error':'0','effortSeconds':12,"
                + "'steps':[{'stage':'Rack','from':0,'to':1,'kind':'direct'},{'stage':'Fine','from':0,'to':-2,'kind':'further'},"
                + "{'stage':'Fine','from':-2,'to':-1,'kind':'return'}],'worn':[],'below':null,'above':null,'reason':null}", 0, forward,
                "--at", "0.1");
    }

    @Test
    void listsTheStepsInAnOrderThatKeepsEveryLimit() throws Exception {
        String limited = StackTexts.COMMON_PRACTICE.replace("</axes>",
                "<shiftLimits lowest=\"1\" highest=\"2\" limit=\"10 mm\"/></axes>");
        // From (2, −2), 0.2 mm, to (4, −4), 0.4 mm: the rack first would give 20 − 9.8 = 10.2 mm, beyond the limit.
        JsonNode json = plan(0, limited, "--at", "0.4", "--from", "2,-2");
        assertEquals(READER.readTree("[{'stage':'Fine','from':-2,'to':-4,'kind':'direct'},{'stage':'Rack','from':2,'to':4,'kind':'direct'}]"
                .replace('\'', '"')), json.get("steps"));
    }

    @Test
    void chargesForTurningRoundAgainstTheLastMoveInTheFile() throws Exception {
        String moved = StackTexts.COMMON_PRACTICE.replace("<stages name=\"Rack\"",
                "<stages reversalSeconds=\"2.5\" lastMove=\"back\" name=\"Rack\"");
        // 4 + 1 s for each stage, and 2.5 s for the rack; nothing is known of a setting that is typed.
        assertEquals("12.5", plan(0, moved, "--at", "0.1").get("effortSeconds").toString());
        assertEquals("10", plan(0, moved, "--at", "0.1", "--from", "0,0").get("effortSeconds").toString());
    }

    @Test
    void hasNoStepsWhereNothingMoves() throws Exception {
        assertJson("{'reached':true,'unit':'mm','setting':[0,0],'position':'0','error':'0','effortSeconds':0,"
                + "'steps':[],'worn':[],'below':null,'above':null,'reason':null}", 0, StackTexts.COMMON_PRACTICE, "--at", "0");
    }

    @Test
    void holdsBothNeighboursAndTheReasonWhereTheTargetIsNotReachable() throws Exception {
        assertJson("{'reached':false,'unit':'mm','setting':null,'position':null,'error':null,'effortSeconds':null,"
                + "'steps':null,'worn':null,"
                + "'below':{'setting':[1,-1],'position':'0.1','error':'-0.07','effortSeconds':10,'steps':["
                + "{'stage':'Rack','from':0,'to':1,'kind':'direct'},{'stage':'Fine','from':0,'to':-1,'kind':'direct'}],'worn':[]},"
                + "'above':{'setting':[2,-2],'position':'0.2','error':'0.03','effortSeconds':12,'steps':["
                + "{'stage':'Rack','from':0,'to':2,'kind':'direct'},{'stage':'Fine','from':0,'to':-2,'kind':'direct'}],'worn':[]},"
                + "'reason':'0.170 mm lies between 0.100 mm and 0.200 mm; the nearer is 0.030 mm away, "
                + "and the tolerance is 0.010 mm.'}", 1, StackTexts.COMMON_PRACTICE, "--at", "0.17", "--tolerance", "0.01");
    }

    @Test
    void hasNoNeighbourBeyondTheEndOfTheTravel() throws Exception {
        JsonNode json = plan(1, StackTexts.COMMON_PRACTICE, "--at", "548.0001");
        assertEquals("[90,20]", json.at("/below/setting").toString());
        assertEquals("-0.0001", json.at("/below/error").textValue());
        assertTrue(json.has("above") && json.get("above").isNull());
    }

    @Test
    void listsAlternativesOnlyWhereAskedFor() throws Exception {
        JsonNode asked = plan(0, StackTexts.COMMON_PRACTICE, "--at", "0.15", "--tolerance", "0.05", "--alternatives", "5");
        assertEquals(READER.readTree("[{'setting':[2,-2],'position':'0.2','error':'0.05','effortSeconds':12,'steps':["
                .replace('\'', '"') + "{'stage':'Rack','from':0,'to':2,'kind':'direct'},{'stage':'Fine','from':0,'to':-2,'kind':'direct'}],'worn':[]}]"
                        .replace('\'', '"')), asked.get("alternatives"));
        assertEquals("[]", plan(1, StackTexts.COMMON_PRACTICE, "--at", "0.15", "--alternatives", "5")
                .get("alternatives").toString());
        assertEquals(false, plan(0, StackTexts.COMMON_PRACTICE, "--at", "0.1").has("alternatives"));
    }

    @Test
    void namesTheWornStages() throws Exception {
        JsonNode json = plan(0, StackTexts.WORN, "--at", "0.1");
        assertEquals("[\"Rack\"]", json.get("worn").toString());
        assertEquals("[1,-1]", json.get("setting").toString());
        // Clean settings near 0.1 mm: (6, −6) above; below 0 the rack's 19 teeth and −20 give 95 − 98 = −3 mm.
        JsonNode never = plan(1, StackTexts.WORN, "--at", "0.1", "--worn", "never");
        assertEquals("[19,-20]", never.at("/below/setting").toString());
        assertEquals("-3", never.at("/below/position").textValue());
        assertEquals("-3.1", never.at("/below/error").textValue());
        assertEquals(47, never.at("/below/effortSeconds").intValue());
        assertEquals("[6,-6]", never.at("/above/setting").toString());
        assertEquals("0.6", never.at("/above/position").textValue());
    }

    @Test
    void givesPositionsInExactMillimetresWhateverTheUnitOfTheFile() throws Exception {
        // 1/4 in − 0.24 in = 0.01 in = 0.254 mm.
        JsonNode json = plan(0, StackTexts.INCH, "--at", "0.01");
        assertEquals("0.254", json.get("position").textValue());
        assertEquals("mm", json.get("unit").textValue());
    }

    @Test
    void givesAModulePitchToTheFemtometre() throws Exception {
        // π mm = 3.141 592 653 589 793… mm (OEIS A000796), which is 3 141 592 653 590 fm.
        String rack = StackTexts.positioner("mm", StackTexts.axis("X", "linear",
                StackTexts.stage("Rack", "module 1", 0, 100, "")));
        JsonNode json = plan(0, rack, "--at", "3.1416", "--tolerance", "0.01");
        assertEquals("3.14159265359", json.get("position").textValue());
        assertEquals("-0.00000734641", json.get("error").textValue());
    }

    @Test
    void givesDegreesOnARotaryAxis() throws Exception {
        JsonNode json = plan(0, StackTexts.ROTARY, "--at", "1°02'", "--tolerance", "30\"");
        // Two sectors forward and one ring tooth back: 2°02' − 1°.
        assertEquals("deg", json.get("unit").textValue());
        assertEquals("[-1,2]", json.get("setting").toString());
        // 1°02' = 62/60 degrees, to 15 decimals.
        assertEquals("1.033333333333333", json.get("position").textValue());
        JsonNode back = plan(0, StackTexts.ROTARY, "--at", "-1");
        assertEquals("359", back.get("position").textValue());
        assertEquals("[-1,0]", back.get("setting").toString());
    }

    @Test
    void givesFractionsOfASecondOfEffortAsDecimals() throws Exception {
        String quick = StackTexts.COMMON_PRACTICE.replace("minimumEngaged", "perToothSeconds=\"0.25\" minimumEngaged");
        assertEquals("8.5", plan(0, quick, "--at", "0.1").get("effortSeconds").toString());
    }

    @Test
    void isOneLineOfAsciiThatKeepsEveryCharacter() throws Exception {
        String named = StackTexts.COMMON_PRACTICE.replace("\"Rack\"", "\"Größe “Ω”\"");
        CommandRun run = run(named, "--at", "0.1");
        assertTrue(run.out().chars().allMatch(c -> c < 127), run.out());
        assertEquals(1, run.out().lines().count());
        assertEquals("Größe “Ω”", READER.readTree(run.out()).at("/steps/0/stage").textValue());
    }

    private void assertJson(String expected, int code, String stack, String... options) throws Exception {
        assertEquals(READER.readTree(expected.replace('\'', '"')), plan(code, stack, options));
    }

    private JsonNode plan(int code, String stack, String... options) throws Exception {
        CommandRun run = run(stack, options);
        assertEquals(code, run.code(), run.err());
        assertEquals("", run.err());
        return READER.readTree(run.out());
    }

    private CommandRun run(String stack, String... options) throws Exception {
        List<String> arguments = new ArrayList<>(List.of("plan", StackTexts.write(folder, stack), "--json"));
        arguments.addAll(List.of(options));
        return CommandRun.of(arguments.toArray(String[]::new));
    }
}
