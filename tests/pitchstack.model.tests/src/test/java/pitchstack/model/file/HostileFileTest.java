// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.RandomAccessFile;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.SocketTimeoutException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.file.StackFileException.Problem;

/** Files made to harm: they are refused at once, and nothing beside them is opened. */
class HostileFileTest {
    private static final Duration AT_ONCE = Duration.ofSeconds(10);
    private static final int PATIENCE_MS = 300;
    private static final String NO_DOCTYPE = "this is a document type (DOCTYPE); a stack file has none, and none is read.";
    @TempDir
    private Path folder;

    @Test
    void readsNoEntitiesThatGrow() throws Exception {
        String laughs = IntStream.rangeClosed(1, 12).mapToObj(i -> "<!ENTITY l" + i + " \""
                + ("&l" + (i - 1) + ";").repeat(10) + "\">").collect(Collectors.joining());
        StackFileException e = refuse("<!DOCTYPE a [<!ENTITY l0 \"lol\">" + laughs + "]>" + Xml.START
                + "<axes name=\"&l12;\"/>" + Xml.END);
        assertTrue(e.getMessage().endsWith(NO_DOCTYPE), e.getMessage());
    }

    @Test
    void readsNoOtherFileThroughAnEntity() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), "the combination is 1234");
        StackFileException e = refuse("<!DOCTYPE a [<!ENTITY x SYSTEM \"" + secret.toUri() + "\">]>" + Xml.START
                + "<axes>&x;</axes>" + Xml.END);
        assertTrue(e.getMessage().endsWith(NO_DOCTYPE), e.getMessage());
        assertFalse(e.getMessage().contains("1234"));
    }

    @Test
    void includesNoOtherFile() throws Exception {
        Path other = Files.writeString(folder.resolve("other.xml"), "<axes/>");
        StackFileException e = refuse(Xml.around("<xi:include xmlns:xi=\"http://www.w3.org/2001/XInclude\" href=\""
                + other.toUri() + "\"/>"));
        assertTrue(e.getMessage().endsWith("Positioner has no element “xi:include”; allowed are titleBlock, axes and printSetups."));
    }

    /** Whoever is named in a file hears nothing: the port is ours, and no one calls. */
    @Test
    void callsNobody() throws Exception {
        try (ServerSocket ear = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
            ear.setSoTimeout(PATIENCE_MS);
            String url = "http://127.0.0.1:" + ear.getLocalPort() + "/model";
            String xsi = "xmlns:xsi=\"http://www.w3.org/2001/XMLSchema-instance\" xsi:";
            refuse("<!DOCTYPE a SYSTEM \"" + url + ".dtd\">" + Xml.START + Xml.END);
            refuse("<!DOCTYPE a PUBLIC \"a\" \"" + url + ".dtd\"><a/>");
            refuse("<!DOCTYPE a [<!ENTITY % p SYSTEM \"" + url + ".ent\"> %p;]><a/>");
            refuse(Xml.around("").replace("xmi:version", xsi + "schemaLocation=\"pitchstack:model/2 " + url
                    + ".ecore\" xmi:version"));
            refuse(Xml.around("<axes " + xsi + "type=\"ps:Axis\"/>"));
            refuse("<m:Positioner xmlns:m=\"" + url + ".ecore\"/>");
            refuse(Xml.around("<axes><stages correctionRun=\"" + url + ".pitchstack#r\"/></axes>"));
            refuse(Xml.around("<axes href=\"" + url + ".pitchstack#//@axes.0\"/>"));
            assertThrows(SocketTimeoutException.class, () -> ear.accept().close());
        }
    }

    @Test
    void refusesAFileThatIsTooLargeWithoutReadingIt() throws Exception {
        Path file = folder.resolve("large.pitchstack");
        try (var sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(1L << 40);
        }
        StackFileException e = assertTimeoutPreemptively(AT_ONCE,
                () -> assertThrows(StackFileException.class, () -> StackFile.load(file)));
        assertEquals("large.pitchstack: the file is larger than the 16 MB that a stack file may have.", e.getMessage());
        assertEquals(Problem.TOO_LARGE, e.problem());
    }

    @Test
    void takesAFileOfExactlyTheLargestSize() throws Exception {
        String text = Xml.around("");
        Path file = Files.writeString(folder.resolve("full.pitchstack"),
                text + " ".repeat(StackFile.MAX_BYTES - text.length()));
        StackFile.load(file);
        Files.writeString(file, Files.readString(file) + " ");
        assertThrows(StackFileException.class, () -> StackFile.load(file));
    }

    @Test
    void refusesDeepNesting() throws Exception {
        int deep = 200_000;
        StackFileException e = refuse(Xml.around("<axes>".repeat(deep) + "</axes>".repeat(deep)));
        assertEquals(3, e.line());
        StackFileException unclosed = refuse(Xml.around("<axes>".repeat(deep)));
        assertEquals(3, unclosed.line());
    }

    @Test
    void refusesMoreAttributesThanAnElementCanHave() throws Exception {
        String many = IntStream.range(0, 100_000).mapToObj(i -> " a" + i + "=\"\"").collect(Collectors.joining());
        StackFileException e = refuse(Xml.around("<axes" + many + "/>"));
        assertEquals(Problem.TOO_LARGE, e.problem());
        assertTrue(e.getMessage().endsWith("this goes past what is read: 16 elements deep, 64 attributes in one"
                + " element."), e.getMessage());
    }

    @Test
    void refusesMoreElementsThanAStackHas() throws Exception {
        StackFileException e = refuse(Xml.around("<axes/>\n".repeat(StackFile.MAX_ELEMENTS)));
        assertEquals(Problem.TOO_LARGE, e.problem());
        // The Positioner is the first element, so the one too many is the last of the repeated ones.
        assertEquals(2 + StackFile.MAX_ELEMENTS, e.line());
    }

    @Test
    void takesTimeInProportionToTheFileHoweverManyReferencesItHas() throws Exception {
        int references = 100_000;
        Path file = folder.resolve("references.pitchstack");
        Files.writeString(file, Xml.around("<axes>" + "<stages correctionRun=\"r\"/>\n".repeat(references)
                + "<runs id=\"r\"/></axes>"));
        assertTimeoutPreemptively(AT_ONCE, () -> assertEquals(references,
                StackFile.load(file).positioner().getAxes().get(0).getStages().size()));
    }

    private StackFileException refuse(String text) throws Exception {
        Path file = folder.resolve("hostile.pitchstack");
        Files.writeString(file, text);
        return assertTimeoutPreemptively(AT_ONCE,
                () -> assertThrows(StackFileException.class, () -> StackFile.load(file)));
    }
}
