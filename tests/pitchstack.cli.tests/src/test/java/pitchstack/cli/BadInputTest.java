// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What cannot be answered: exit code 2, one line on the error stream, nothing on the output, JSON or not. */
class BadInputTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void writeFiles() throws Exception {
        Files.writeString(folder.resolve("good"), StackTexts.COMMON_PRACTICE);
        Files.writeString(folder.resolve("rotary"), StackTexts.ROTARY);
        Files.writeString(folder.resolve("two"), StackTexts.TWO_AXES);
        Files.writeString(folder.resolve("twins"), StackTexts.TWO_AXES.replace("\"Y\"", "\"X\""));
        Files.writeString(folder.resolve("none"), StackTexts.positioner("mm", ""));
        Files.writeString(folder.resolve("astray"), StackTexts.COMMON_PRACTICE.replace("\"Rack\"", "\"Rack\" index=\"500\""));
        Files.writeString(folder.resolve("unread"), StackTexts.COMMON_PRACTICE.replace("4.9 mm", "4.9 furlongs"));
        Files.writeString(folder.resolve("like"), StackTexts.COMMON_PRACTICE.replace("\"Fine\"", "\"Rack\""));
        Files.writeString(folder.resolve("text"), "Dear toolmaker,\n");
        Files.writeString(folder.resolve("broken"), StackTexts.COMMON_PRACTICE.replace("</axes>", "</axe>"));
        Files.writeString(folder.resolve("newer"), StackTexts.COMMON_PRACTICE.replace("model/1", "model/2"));
        Files.createSymbolicLink(folder.resolve("loop"), Path.of("loop"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            plan missing --at 1              | missing: there is no such file.
            plan . --at 1                    | this is not a file but a folder or a device.
            plan good/inside --at 1          | inside: the file cannot be read (
            plan loop --at 1                 | loop: the file cannot be read (
            plan text --at 1                 | text, line 1, column 1: this is not XML;
            plan broken --at 1               | broken, line 6, column 
            plan newer --at 1                | newer
            plan none --at 1                 | “Test bench” has no axis.
            plan two --at 1                  | “Test bench” has 2 axes; name one of them with --axis: “X”, “Y”.
            plan twins --at 1 --axis X       | “Test bench” has 2 axes “X”; give them different names in the file first.
            plan good --at 1 --axis Y        | “Test bench” has no axis “Y”; it has “Slide”.
            plan good --at 1 --from 1        | --from: “1” has 1 index, but axis “Slide” has 2 stages, lowest first: “Rack”, “Fine”.
            plan good --at 1 --from 1,2,3    | --from: “1,2,3” has 3 indices, but axis “Slide” has 2 stages,
            plan good --at 1 --from 1,       | --from: “” is not an index;
            plan good --at 1 --from 1,two    | --from: “two” is not an index; write whole numbers with commas between,
            plan good --at 1 --from 1.5,0    | --from: “1.5” is not an index;
            plan good --at 1 --from 1,500    | --from: stage “Fine” cannot stand at 500, where its rows do not meet; it moves from −20 to 20.
            plan astray --at 1               | In the file stage “Rack” cannot stand at 500, where its rows do not meet; it moves from −10 to 90.
            plan unread --at 1               | “furlongs” is not a unit of length here; use mm, in, thou or um.
            plan good --at ten               | --at: “ten” is not a length; write it like 37.625 in,
            plan good --at 1,5               | --at: “1,5” is not a number; write it like 12.5, 5/8 or 37 5/8, with a point and not a comma.
            plan good --at 1/0               | --at: “1/0” divides by zero.
            plan good --at 3furlongs         | --at: “furlongs” is not a unit of length here; use mm, in, thou or um.
            plan good --at 9999999999in      | --at: That is more than the program can hold;
            plan good --at=                  | --at: “” is not a length;
            plan rotary --at 5mm             | --at: “5mm” is not an angle; write it like 12.5,
            plan good --at 1 --tolerance -.1 | --tolerance: “-.1” is below 0; a tolerance counts to both sides,
            plan good --at 1 --tolerance x   | --tolerance: “x” is not a length;
            plan good --at 1 --worn maybe    | --worn: “maybe” is not known; write allow, avoid or never.
            plan good --at 1 --alternatives x  | --alternatives: “x” is not a whole number from 0 to 1000.
            plan good --at 1 --alternatives -1 | --alternatives: “-1” is not a whole number from 0 to 1000.
            plan good --at 1 --alternatives 1001 | --alternatives: “1001” is not a whole number from 0 to 1000.
            plan good --at 37 5/8in          | “5/8in” is one word too many; put a length with a space in it in quotation marks,
            plan good --at 37.5 in           | “in” is one word too many; put a length with a space in it in quotation marks,
            plan good --at=37 5/8            | “5/8” is one word too many; put a length with a space in it in quotation marks,
            plan good more --at 1            | “more” is one word too many. See pitchstack plan --help
            plan good --at 1 --tolerence 1   | There is no option --tolerence; did you mean --tolerance? See pitchstack plan --help
            plan good --at 1 --at 2          | option '--at' (X) should be specified only once. See pitchstack plan --help
            plan good                        | A target is missing; write --at with a position, or --by with how far to move.
            plan good --at 1 --by 1          | --at and --by cannot both be given; write the position or how far to move.
            plan good --by ten               | --by: “ten” is not a length; write it like 37.625 in,
            plan good --by 9223372mm --from 1,0 | --by: “9223372mm” from where the stages stand is more than the program can hold.
            plan rotary --by 5mm             | --by: “5mm” is not an angle; write it like 12.5,
            plan good --at 1 --approach up   | --approach: “up” is not known; write forward, back or either.
            plan good --at 1 --temperature warm | --temperature: “warm” is not a temperature; write it like 28, 28.5C or 82F.
            plan good --at 1 --temperature 28K  | --temperature: “28K” is not a temperature;
            plan good --at 1 --temperature -300 | --temperature: “-300” is not the temperature of a shop; it must be from −50 to 150 °C.
            plan good --at 1 --temperature 400F | --temperature: “400F” is not the temperature of a shop;
            plan --at 1                      | Missing required parameter: 'FILE'. See pitchstack plan --help
            plan good --at --worn            | Expected parameter for option '--at' but found '--worn'. See pitchstack plan --help
            coverage missing                 | missing: there is no such file.
            coverage two                     | “Test bench” has 2 axes; name one of them with --axis: “X”, “Y”.
            coverage unread                  | “furlongs” is not a unit of length here; use mm, in, thou or um.
            coverage good --step 0           | --step: “0” is not a step; it must be above 0
            coverage good --step -1mm        | --step: “-1mm” is not a step; it must be above 0
            coverage good --step x           | --step: “x” is not a length;
            coverage good --step 1um --tolerance -1 | --tolerance: “-1” is below 0; a tolerance counts to both sides,
            coverage good --out strip.png    | --out: “strip.png” must end with .csv or .svg, which tells the format.
            coverage good --step 0.000000001um | is too fine to map the whole travel; take 
            coverage good --temperature x    | --temperature: “x” is not a temperature;
            coverage good --bar Rack         | --bar: “Rack” is not a stretch of teeth; write it like Rack:base:100-101 or 1:rider:7.
            coverage good --bar Rack:top:1-2 | --bar: “Rack:top:1-2” is not a stretch of teeth;
            coverage good --bar Rack:base:-1 | --bar: “Rack:base:-1” is not a stretch of teeth;
            coverage good --wear Rack:base:9-3   | --wear: “Rack:base:9-3” ends before it begins; write the lower tooth first.
            coverage good --bar Rack:base:99-100 | --bar: “Rack:base:99-100” is beyond the row; its teeth go from 0 to 99.
            coverage good --wear Fine:rider:20   | --wear: “Fine:rider:20” is beyond the row; its teeth go from 0 to 19.
            coverage good --bar Rock:base:1  | --bar: “Rock:base:1” names no stage of axis “Slide”; it has 1 “Rack”, 2 “Fine”.
            coverage good --bar 3:base:1     | --bar: “3:base:1” names no stage of axis “Slide”;
            coverage good --bar 0:base:1     | --bar: “0:base:1” names no stage of axis “Slide”;
            coverage like --bar Rack:base:1  | --bar: “Rack:base:1” names several stages; write the number of one: 1 “Rack”, 2 “Rack”.
            coverage good --targets list.csv | --targets shows what marks cost a list; name the teeth with --bar or --wear.
            coverage good --bar 1:base:1 --targets none.csv | --targets: there is no file “none.csv”.
            table good                       | Axis “Slide” has no targets in the file; save some in the window, or name a list with --targets.
            wear good                        | Axis “Slide” has no targets in the file; save some in the window, or name a list with --targets.
            wear missing                     | missing: there is no such file.
            wear                             | Missing required parameter: 'FILE'. See pitchstack wear --help
            coverage                         | Missing required parameter: 'FILE'. See pitchstack coverage --help
            check missing                    | missing: there is no such file.
            check none                       | “Test bench” has no axis to check.
            check broken                     | broken, line 6, column 
            check                            | Missing required parameter: 'FILE'. See pitchstack check --help
            check good --at 1                | There is no option --at
            paln good --at 1                 | There is no command “paln”; write plan, table, coverage, wear, check, budget, fit, evaluate, draw, card or part.
            fence.pitchstack                 | to open a file in the window: pitchstack --window fence.pitchstack
            --bogus                          | There is no option --bogus. See pitchstack --help
            """)
    void saysInOneLineWhatIsWrong(String words, String sentence) {
        assertRefused(sentence, arguments(words));
        if (words.matches("(plan|table|coverage|wear|check) .*")) {
            assertRefused(sentence, arguments(words + " --json"));
        }
    }

    @Test
    void asksForACommandWhereThereIsNone() {
        assertRefused("A command is missing; write plan, table, coverage, wear, check, budget, fit, evaluate, draw, card or part, or see pitchstack --help",
                new String[0]);
    }

    @Test
    void refusesAnEmptyFileName() {
        assertRefused("The name of the stack file is empty.", "plan", "", "--at", "1");
        assertRefused("The name of the stack file is empty.", "check", " ");
    }

    @Test
    void refusesANameThatNoFileCanHave() {
        assertRefused("cannot be the name of a file here.", "check", "bad\0name");
    }

    @Test
    void pointsToTheCheckWhereTheStackHasErrors() {
        assertRefused("All findings: pitchstack check " + folder.resolve("unread"),
                "plan", folder.resolve("unread").toString(), "--at", "1");
    }

    @Test
    void asksToReportAFaultOfTheProgramInOneLineToo() {
        StringWriter err = new StringWriter();
        PrintWriter to = new PrintWriter(err);
        assertEquals(2, new Complaints(to).fault(new IllegalStateException("first line\nsecond line")));
        assertEquals("pitchstack: This is a fault in Pitchstack, not in what you typed (java.lang.IllegalStateException: "
                + "first line second line). Please report it with the command and the file; with PITCHSTACK_DEBUG=1 set it "
                + "shows where it came from." + System.lineSeparator(), err.toString());
    }

    /** The second word is a file of the folder. */
    private String[] arguments(String words) {
        String[] arguments = words.split(" +");
        if (arguments.length > 1 && !arguments[1].startsWith("-")) {
            arguments[1] = folder.resolve(arguments[1]).toString();
        }
        return arguments;
    }

    private static void assertRefused(String sentence, String... arguments) {
        CommandRun run = CommandRun.of(arguments);
        assertEquals(2, run.code(), run.out() + run.err());
        assertEquals("", run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith("pitchstack: "), run.err());
        assertTrue(run.err().contains(sentence), run.err());
    }
}
