// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.model.Positioner;

class RoundTripTest {
    private static final long SEED = 20260117;
    private static final int DOCUMENTS = 400;
    @TempDir
    private Path folder;

    @Test
    void randomDocumentsComeBackEqualAndTheSameToTheByte() throws Exception {
        agree(SEED);
    }

    @Test
    void soDoDocumentsOfAFreshSeed() throws Exception {
        agree(new Random().nextLong());
    }

    private void agree(long seed) throws Exception {
        Path first = folder.resolve("first.pitchstack");
        Path second = folder.resolve("second.pitchstack");
        for (int i = 0; i < DOCUMENTS; i++) {
            Positioner written = new RandomDocument(new Random(seed + i)).positioner();
            StackFile.save(written, first);
            Positioner read = StackFile.load(first).positioner();
            assertNotSame(written, read);
            assertTrue(EcoreUtil.equals(written, read), "seed " + (seed + i));
            StackFile.save(read, second);
            assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second), "seed " + (seed + i));
        }
    }

    /** The layout that people and version control see, written by hand. */
    @Test
    void writesAFileThatReadsWell() throws Exception {
        String text = """
                <?xml version="1.0" encoding="UTF-8"?>
                <ps:Positioner xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:ps="pitchstack:model/1"
                    title="Plate" temperatureC="20.0" lineWidth="0.4 mm" temperatureHalfWidthK="2.0" sharedScale="0.95">
                  <axes name="X" kind="rotary" datum="0" tolerance="0">
                    <stages name="Rack" pitch="360 per turn" index="-3" minimumEngaged="8" releaseSeconds="4.0" perToothSeconds="1.0"
                        correctionRun="run-1">
                      <baseRow teeth="360">
                        <worn first="3" last="5" kind="barred" note="line&#xA;break"/>
                      </baseRow>
                      <indexErrors error="2 um"/>
                      <indexErrors index="-3" error="-1/8 um"/>
                    </stages>
                    <runs id="run-1" temperatureC="21.5">
                      <readings approach="up" value="1/8 in">
                        <setting>-3</setting>
                      </readings>
                    </runs>
                  </axes>
                </ps:Positioner>
                """;
        Path file = folder.resolve("plate.pitchstack");
        Files.writeString(file, text);
        StackFile.save(StackFile.load(file).positioner(), file);
        assertEquals(text, Files.readString(file));
    }

    @Test
    void keepsEveryCharacterThatItDoesNotRefuse() throws Exception {
        Path file = folder.resolve("characters.pitchstack");
        StringBuilder kept = new StringBuilder();
        for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
            if (mayStandInXml(c)) {
                kept.appendCodePoint(c);
            }
        }
        StackFile.save(Samples.titled(kept.toString()), file);
        assertEquals(kept.toString(), Samples.titleIn(file));
        for (int c = 0; c <= 0xFFFF; c++) {
            if (!mayStandInXml(c)) {
                Positioner positioner = Samples.titled("a" + (char) c + "b");
                assertThrows(StackFileException.class, () -> StackFile.save(positioner, file));
            }
        }
        assertEquals(kept.toString(), Samples.titleIn(file));
    }

    /** Production 2 of XML 1.0, fifth edition. */
    private static boolean mayStandInXml(int c) {
        return c == 0x9 || c == 0xA || c == 0xD || (0x20 <= c && c <= 0xD7FF) || (0xE000 <= c && c <= 0xFFFD)
                || (0x10000 <= c && c <= 0x10FFFF);
    }

    @Test
    void keepsTextsThatAreVeryLongOrFullOfEntities() throws Exception {
        Path file = folder.resolve("long.pitchstack");
        for (String title : new String[] {"n".repeat(5_000_000), "\"&<>\n".repeat(200_000), "🔧".repeat(1_000_000)}) {
            StackFile.save(Samples.titled(title), file);
            assertEquals(title, Samples.titleIn(file));
        }
    }

    @Test
    void endsLinesWithALineFeedAlone() throws Exception {
        Path file = folder.resolve("lines.pitchstack");
        StackFile.save(Samples.large("two\r\nlines", 20), file);
        String text = Files.readString(file);
        assertFalse(text.contains("\r"));
        assertTrue(text.endsWith("</ps:Positioner>\n"));
    }
}
