// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Target;

/** Documents for tests of saving, and a look at what saving leaves behind. */
final class Samples {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;

    private Samples() {
    }

    /** A positioner with a title and one axis. */
    static Positioner titled(String title) {
        Positioner positioner = FACTORY.createPositioner();
        positioner.setTitle(title);
        positioner.getAxes().add(FACTORY.createAxis());
        return positioner;
    }

    /** The same with as many targets, each some 60 bytes in the file. */
    static Positioner large(String title, int targets) {
        Positioner positioner = titled(title);
        Axis axis = positioner.getAxes().get(0);
        for (int i = 0; i < targets; i++) {
            Target target = FACTORY.createTarget();
            target.setName(title + " " + i);
            target.setPosition(i + " mm");
            axis.getTargets().add(target);
        }
        return positioner;
    }

    /** The title of the positioner in a file, which must be whole. */
    static String titleIn(Path file) throws StackFileException {
        return StackFile.load(file).positioner().getTitle();
    }

    /** The names in a folder, sorted. */
    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** As many random positioners as asked for, the same for the same seed. */
    static Stream<Positioner> random(long seed, int count) {
        return Stream.iterate(0, i -> i + 1).limit(count)
                .map(i -> new RandomDocument(new Random(seed + i)).positioner());
    }
}
