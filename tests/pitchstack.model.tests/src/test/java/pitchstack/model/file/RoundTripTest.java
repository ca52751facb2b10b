// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
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
    @TempDir
    private Path folder;

    @Test
    void randomDocumentsComeBackEqualAndTheSameToTheByte() throws Exception {
        for (int i = 0; i < 300; i++) {
            Positioner written = new RandomDocument(new Random(SEED + i)).positioner();
            Path first = folder.resolve("first.pitchstack");
            Path second = folder.resolve("second.pitchstack");
            StackFile.save(written, first);
            Positioner read = StackFile.load(first).positioner();
            assertTrue(EcoreUtil.equals(written, read), "seed " + (SEED + i));
            StackFile.save(read, second);
            assertArrayEquals(Files.readAllBytes(first), Files.readAllBytes(second), "seed " + (SEED + i));
        }
    }
}
