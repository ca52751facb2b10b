// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.model.file.StackFileException.Problem;

/** What the Positioner of a file may not hold. The sign ¦ in a file marks the place that the message has to name. */
class WrongContentTest {
    private static final String MARK = "¦";
    private static final String WHOLE = " is not a whole number that the program can hold; write it like 24,"
            + " from -2147483648 to 2147483647.";
    private static final String DECIMAL = " is not a number that the program can hold; write it like 20.5, with a point.";
    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes><stages><baseRow ¦teeth='abc'/></stages></axes>                     | teeth = “abc”",
        "<axes><stages><baseRow ¦teeth=''/></stages></axes>                        | teeth = “”",
        "<axes><stages><baseRow ¦teeth='4.0'/></stages></axes>                     | teeth = “4.0”",
        "<axes><stages><baseRow ¦teeth='0x10'/></stages></axes>                    | teeth = “0x10”",
        "<axes><stages name='index'~ pitch = '>' ~ ¦index = \"2147483648\"/></axes>| index = “2147483648”",
        "<axes><stages ¦index='-2147483649'/></axes>                               | index = “-2147483649”",
        "<axes><stages ¦index='٣'/></axes>                                         | index = “٣”",
        "<axes><stages><indexErrors ¦index='1.5' error='2 um'/></stages></axes>    | index = “1.5”",
        "<axes><runs><readings><setting>1</setting>~<setting>x</setting>¦</readings></runs></axes> | setting “x”",
    })
    void refusesWhatIsNoWholeNumber(String content, String found) throws Exception {
        check(content, found + WHOLE);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes><stages ¦expansionPpmPerK='1,5'/></axes>  | expansionPpmPerK = “1,5”",
        "<axes><stages ¦expansionPpmPerK='NaN'/></axes>  | expansionPpmPerK = “NaN”",
        "<axes><stages ¦expansionPpmPerK='1e999'/></axes>| expansionPpmPerK = “1e999”",
        "<axes><stages ¦expansionPpmPerK='1f'/></axes>   | expansionPpmPerK = “1f”",
        "<axes><runs ¦temperatureC='٢٠'/></axes>         | temperatureC = “٢٠”",
    })
    void refusesWhatIsNoNumber(String content, String found) throws Exception {
        check(content, found + DECIMAL);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes ¦kind='lineal'/>| kind = “lineal” is not known; allowed are linear and rotary.",
        "<axes ¦kind='LINEAR'/>| kind = “LINEAR” is not known; allowed are linear and rotary.",
        "<axes><runs><readings ¦approach='left'/></runs></axes>"
            + "                | approach = “left” is not known; allowed are unknown, up and down.",
    })
    void refusesWordsThatAreNotOfferedThere(String content, String sentence) throws Exception {
        check(content, sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes name='X'>~  ¦<stage/></axes>   | Axis “X” has no element “stage”; allowed are stages, targets, runs and shiftLimits.",
        "<axes><targets>¦<axes/></targets></axes>| Target has no element “axes”; none is allowed.",
        "¦<x:axes xmlns:x='pitchstack:model/1'/> | Positioner has no element “x:axes”; allowed are titleBlock, axes and printSetups.",
        "<titleBlock/>~¦<titleBlock/>            | Positioner has a second titleBlock; one is allowed.",
        "<axes><runs><readings><setting>1¦<b/></setting></readings></runs></axes>"
            + "                                  | the element setting holds the element “b”; it takes only a value as its"
            + " text.",
        "<axes>three of them¦</axes>             | Axis holds the text “three of them”; it takes attributes and elements"
            + " only.",
    })
    void refusesElementsAndTextThatAreNotKnownThere(String content, String sentence) throws Exception {
        check(content, sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes name='low=' ¦lenght='3'/>        | Axis “low=” has no attribute “lenght”; allowed are name, kind, datum,"
            + " low, high, tolerance, wantedStep, datumUncertainty and approach.",
        "<axes><runs><readings ¦setting='3'/></runs></axes>"
            + "                                 | Reading has no attribute “setting”; allowed are approach,"
            + " value, uncertainty and temperatureC.",
        "<axes><runs><readings><setting ¦a='2'>1</setting></readings></runs></axes>"
            + "                                 | the element setting takes no attribute, only a value as its text.",
        "<titleBlock ¦xmi:version='2.0'/>       | TitleBlock has no attribute “xmi:version”; allowed are owner, number,"
            + " creator, approver, issued, revision and notes.",
        "<titleBlock xmlns:x='urn:x' ¦x:owner='me'/>"
            + "                                 | TitleBlock has no attribute “x:owner”; allowed are owner, number,"
            + " creator, approver, issued, revision and notes.",
    })
    void refusesAttributesThatAreNotKnownThere(String content, String sentence) throws Exception {
        check(content, sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "<axes><stages ¦correctionRun='run-2'/>~<runs id='run-1'/></axes>"
            + " | correctionRun = “run-2” is the id of no measurement run in this file; it must be one of the same file.",
        "<axes><stages ¦correctionRun='other.pitchstack#run-1'/><runs id='run-1'/></axes>"
            + " | correctionRun = “other.pitchstack#run-1” is the id of no measurement run in this file; it must be one of"
            + " the same file.",
        "<axes><stages ¦correctionRun='//@axes.0/@runs.0'/><runs/></axes>"
            + " | correctionRun = “//@axes.0/@runs.0” is the id of no measurement run in this file; it must be one of the"
            + " same file.",
        "<axes><stages name='a'>¦<correctionRun href='other.pitchstack#run-1'/></stages></axes>"
            + " | Stage “a” has no element “correctionRun”; allowed are baseRow, riderRow, toothForm and indexErrors.",
        "<axes><runs id='a'/>~<runs date='id=' ¦id='a'/></axes>"
            + " | a second measurement run has the id “a”; every run needs an id of its own.",
    })
    void refusesReferencesThatDoNotLeadToARunOfTheFile(String content, String sentence) throws Exception {
        check(content, sentence);
    }

    @ParameterizedTest
    @CsvSource({"'\n'", "'\r\n'", "'\r'"})
    void countsLinesHoweverTheyEnd(String end) throws Exception {
        String text = Xml.around("<axes/>\n<axes ¦nom='πλ🔧'/>").replace("\n", end);
        StackFileException e = refuse(text.replace(MARK, ""));
        assertEquals(4, e.line());
        assertEquals("<axes ".length() + 1, e.column());
    }

    private void check(String content, String sentence) throws Exception {
        String marked = Xml.around(content.replace("~", "\n"));
        String before = marked.substring(0, marked.indexOf(MARK));
        int line = before.split("\n", -1).length;
        int column = before.length() - before.lastIndexOf('\n');
        StackFileException e = refuse(marked.replace(MARK, ""));
        assertEquals("fence.pitchstack, line " + line + ", column " + column + ": " + sentence, e.getMessage());
        assertEquals(Problem.WRONG_CONTENT, e.problem());
        assertEquals(line, e.line());
        assertEquals(column, e.column());
    }

    private StackFileException refuse(String text) throws Exception {
        Path file = folder.resolve("fence.pitchstack");
        Files.writeString(file, text);
        return assertThrows(StackFileException.class, () -> StackFile.load(file));
    }
}
