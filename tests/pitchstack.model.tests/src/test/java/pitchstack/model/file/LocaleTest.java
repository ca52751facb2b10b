// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.model.Positioner;

/** A file and a message are the same in every language of the machine. */
class LocaleTest {
    private static final long SEED = 4711;
    private static final int DOCUMENTS = 40;
    private final Locale usual = Locale.getDefault();
    private final List<Positioner> documents = Samples.random(SEED, DOCUMENTS).toList();
    @TempDir
    private Path folder;

    @BeforeEach
    void speakEnglish() throws Exception {
        Locale.setDefault(Locale.ROOT);
        for (int i = 0; i < documents.size(); i++) {
            StackFile.save(documents.get(i), folder.resolve(i + ".pitchstack"));
        }
    }

    @AfterEach
    void speakAsBefore() {
        Locale.setDefault(usual);
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-CH", "th-TH-u-ca-buddhist-nu-thai", "hi-IN-u-nu-deva"})
    void readsAndWritesTheSameBytes(String language) throws Exception {
        Locale.setDefault(Locale.forLanguageTag(language));
        for (int i = 0; i < documents.size(); i++) {
            Path written = folder.resolve(i + ".pitchstack");
            Path again = folder.resolve("again.pitchstack");
            StackFile.save(StackFile.load(written).positioner(), again);
            assertArrayEquals(Files.readAllBytes(written), Files.readAllBytes(again));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"tr-TR", "ar-EG-u-nu-arab", "de-DE", "ja-JP", "zh-CN"})
    void saysTheSame(String language) throws Exception {
        Path wrong = Files.writeString(folder.resolve("wrong.pitchstack"), Xml.around("<axes kind='LİNEAR'/>"));
        Path broken = Files.writeString(folder.resolve("broken.pitchstack"), Xml.around("<axes>"));
        String wrongInEnglish = messageOf(wrong);
        String brokenInEnglish = messageOf(broken);
        Locale.setDefault(Locale.forLanguageTag(language));
        assertEquals(wrongInEnglish, messageOf(wrong));
        assertEquals(brokenInEnglish, messageOf(broken));
    }

    @Test
    void namesControlCharactersInPlainDigits() {
        Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
        StackFileException e = assertThrows(StackFileException.class,
                () -> StackFile.save(Samples.titled("\u0012"), folder.resolve("a.pitchstack")));
        assertEquals(true, e.getMessage().contains("U+0012"), e.getMessage());
    }

    private static String messageOf(Path file) {
        return assertThrows(StackFileException.class, () -> StackFile.load(file)).getMessage();
    }
}
