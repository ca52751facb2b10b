// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import pitchstack.model.Positioner;

/** A program that saves two documents in turn, again and again, until it is killed. */
final class EndlessSaver {
    /** How it saves. */
    enum Way {
        /** As the program does. */
        WHOLE {
            @Override
            void save(Positioner positioner, byte[] bytes, Path file) throws Exception {
                StackFile.save(positioner, file);
            }
        },
        /** As the program does, with the bytes made beforehand, so that it is nearly always busy with the disk. */
        BYTES {
            @Override
            void save(Positioner positioner, byte[] bytes, Path file) throws Exception {
                new SafeWrite(file).write(bytes);
            }
        },
        /** Over the old file, as a careless program does. */
        IN_PLACE {
            @Override
            void save(Positioner positioner, byte[] bytes, Path file) throws Exception {
                Files.write(file, bytes);
            }
        };

        abstract void save(Positioner positioner, byte[] bytes, Path file) throws Exception;
    }

    private EndlessSaver() {
    }

    /**
     * Saves for ever. What it writes to the output says that the first save is done.
     *
     * @param args the way, the file, and the two documents as files to take them from
     */
    public static void main(String[] args) throws Exception {
        Way way = Way.valueOf(args[0]);
        Path file = Path.of(args[1]);
        List<Path> documents = List.of(Path.of(args[2]), Path.of(args[3]));
        List<byte[]> bytes = new ArrayList<>();
        List<Positioner> positioners = new ArrayList<>();
        for (Path document : documents) {
            bytes.add(Files.readAllBytes(document));
            positioners.add(way == Way.WHOLE ? StackFile.load(document).positioner() : null);
        }
        for (int i = 0;; i = (i + 1) % bytes.size()) {
            way.save(positioners.get(i), bytes.get(i), file);
            System.out.println("saved");
        }
    }
}
