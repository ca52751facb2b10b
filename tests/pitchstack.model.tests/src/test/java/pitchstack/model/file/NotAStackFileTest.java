// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.model.file.StackFileException.Problem;

/** Files that are something else, or that another version wrote. */
class NotAStackFileTest {
    private static final String ONE_ROOT = "; a stack file has one root, a Positioner in the namespace"
            + " pitchstack:model/1.";
    private static final String BROKEN = "; look for a missing tag or quotation mark, or a bare & or <, just before this"
            + " place.";
    @TempDir
    private Path folder;

    static Stream<Arguments> otherFiles() {
        return Stream.of(
                Arguments.of("", ": the file is empty; a stack file holds one Positioner."),
                Arguments.of(" \n\t\n", ": the file is empty; a stack file holds one Positioner."),
                Arguments.of("teeth: 24", ", line 1, column 1: this is not XML; a stack file begins with <?xml and holds"
                        + " one Positioner."),
                Arguments.of("PK\u0003\u0004\u0000", ", line 1, column 1: this is not XML; a stack file begins with <?xml"
                        + " and holds one Positioner."),
                Arguments.of("<!-- a page -->\n<html/>", ", line 2, column 1: the root is “html” without a namespace"
                        + ONE_ROOT),
                Arguments.of("<Positioner/>", ", line 1, column 1: the root is “Positioner” without a namespace"
                        + ONE_ROOT),
                Arguments.of("<p:Positioner xmlns:p='pitchstack:model/0'/>", ", line 1, column 1: the root is"
                        + " “Positioner” in the namespace “pitchstack:model/0”" + ONE_ROOT),
                Arguments.of("<p:Axis xmlns:p='pitchstack:model/1'/>", ", line 1, column 1: the root is “Axis” in the"
                        + " namespace “pitchstack:model/1”" + ONE_ROOT),
                Arguments.of("<xmi:XMI xmi:version='2.0' xmlns:xmi='http://www.omg.org/XMI'><a/><b/></xmi:XMI>",
                        ", line 1, column 1: the root is a wrapper for several roots; a stack file has one root, a"
                        + " Positioner."),
                Arguments.of("<?xml version=\"1.1\"?>" + Xml.START + Xml.END, ", line 1, column 1: this is XML 1.1; a"
                        + " stack file is XML 1.0."));
    }

    @ParameterizedTest
    @MethodSource("otherFiles")
    void saysWhatItFoundAndWhatAStackFileIs(String text, String message) throws Exception {
        assertEquals("other.pitchstack" + message, refuse(text).getMessage());
    }

    @Test
    void saysThatASecondRootIsNotAllowed() throws Exception {
        StackFileException e = refuse(Xml.START + Xml.END + "\n" + Xml.START + Xml.END);
        assertTrue(e.getMessage().endsWith("something follows the end of the Positioner; a stack file has one root."),
                e.getMessage());
        assertEquals(2, e.line());
    }

    @ParameterizedTest
    @ValueSource(strings = {"2", "3", "10", "999999999"})
    void refusesANewerVersionByNameWhateverItHolds(String version) throws Exception {
        StackFileException e = refuse(Xml.around("<axes cams='7'/><quills/>").replace("model/1", "model/" + version));
        assertEquals("other.pitchstack, line 2, column 1: This file was written by a newer Pitchstack (model " + version
                + "); this one reads model 1.", e.getMessage());
        assertEquals(Problem.NEWER_VERSION, e.problem());
    }

    @ParameterizedTest
    @ValueSource(strings = {"<axes name=\"a\" name=\"b\"/>", "<axes name=\"a/>\n<axes/>", "<axes name=a/>",
        "<axes name=\"A & B\"/>", "<axes name=\"&undefined;\"/>", "<axes name=\"&#1;\"/>", "<axes name=\"\u0001\"/>",
        "<axes></axis>", "<1/>", "<ps2:axes/>"})
    void refusesMalformedXmlAtItsLine(String content) throws Exception {
        StackFileException e = refuse(Xml.around(content));
        assertAll(() -> assertTrue(e.getMessage().contains("this is not well-formed XML in "), e.getMessage()),
                () -> assertTrue(e.getMessage().endsWith(BROKEN), e.getMessage()),
                () -> assertTrue(e.line() == 3 || e.line() == 4, e.getMessage()));
    }

    /** Every beginning of a file is refused: there is no length at which half a file passes for a whole one. */
    @Test
    void refusesAFileThatWasCutOffAnywhere() throws Exception {
        String whole = Xml.around("<axes name=\"X\"><stages name=\"π\"><baseRow teeth=\"9\"/></stages></axes>");
        byte[] bytes = whole.strip().getBytes(StandardCharsets.UTF_8);
        for (int length = 0; length < bytes.length; length++) {
            byte[] cut = Arrays.copyOf(bytes, length);
            Path file = folder.resolve("cut.pitchstack");
            Files.write(file, cut);
            assertThrows(StackFileException.class, () -> StackFile.load(file), length + " bytes");
        }
        Path file = folder.resolve("cut.pitchstack");
        Files.write(file, bytes);
        assertEquals("X", StackFile.load(file).positioner().getAxes().get(0).getName());
    }

    @Test
    void pointsToTheBackupWhereAFileBreaksOff() throws Exception {
        String whole = Xml.around("<axes name=\"X\"/>");
        StackFileException e = refuse(whole.substring(0, whole.indexOf("\"X") + 2));
        assertEquals("other.pitchstack, line 3, column 14: the file breaks off here; the previous version may stand"
                + " beside it as other.pitchstack.bak~.", e.getMessage());
    }

    @Test
    void refusesTextThatIsNotUtf8AtItsPlace() throws Exception {
        Path file = folder.resolve("other.pitchstack");
        Files.write(file, Xml.around("<axes name=\"Sägeanschlag\"/>").getBytes(StandardCharsets.ISO_8859_1));
        StackFileException e = assertThrows(StackFileException.class, () -> StackFile.load(file));
        assertEquals("other.pitchstack, line 3, column 14: the text is not in UTF-8 from here on; a stack file is UTF-8"
                + " throughout.", e.getMessage());
        Files.write(file, Xml.around("").getBytes(Charset.forName("UTF-16")));
        assertThrows(StackFileException.class, () -> StackFile.load(file));
    }

    @Test
    void takesAByteOrderMarkAndAnotherPrefix() throws Exception {
        Path file = folder.resolve("other.pitchstack");
        Files.writeString(file, "\ufeff" + Xml.around("<axes name=\"X\"/>").replace("ps:", "p:")
                .replace(":ps=", ":p="));
        assertEquals("X", StackFile.load(file).positioner().getAxes().get(0).getName());
    }

    @Test
    void saysWhatIsMissingOrNoFile() {
        StackFileException missing = assertThrows(StackFileException.class,
                () -> StackFile.load(folder.resolve("none.pitchstack")));
        StackFileException directory = assertThrows(StackFileException.class, () -> StackFile.load(folder));
        assertEquals("none.pitchstack: there is no such file.", missing.getMessage());
        assertEquals(folder.getFileName() + ": this is not a file but a folder or a device.", directory.getMessage());
        assertEquals(Problem.UNREADABLE, missing.problem());
        assertEquals(0, missing.line());
        assertNull(directory.getCause());
    }

    private StackFileException refuse(String text) throws Exception {
        Path file = folder.resolve("other.pitchstack");
        Files.writeString(file, text);
        return assertThrows(StackFileException.class, () -> StackFile.load(file));
    }
}
