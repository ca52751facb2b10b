// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/** The file a document was read from or written to last, and whether another program has changed it since. */
public final class DiskFile {
    /** What tells one state of a file from another without reading it. */
    private record Stamp(FileTime changed, long size) { }

    private final Path path;
    private Stamp known;

    private DiskFile(Path path) {
        this.path = path;
        this.known = stamp();
    }

    /**
     * A file by its one real name.
     *
     * @return the real path, or the absolute one where the file does not exist
     */
    public static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException notThere) {
            return path.toAbsolutePath().normalize();
        }
    }

    /** A file as it is now. */
    public static DiskFile at(Path path) {
        return new DiskFile(path);
    }

    /** Its path. */
    public Path path() {
        return path;
    }

    /** Reads the file. */
    public Resource load() throws StackFileException {
        known = stamp();
        return StackFile.load(path).resource();
    }

    /** Writes a document into the file, which it is then kept in. */
    public void save(Resource document) throws StackFileException {
        StackFile.save((Positioner) document.getContents().get(0), path);
        document.setURI(URI.createFileURI(path.toString()));
        known = stamp();
    }

    /** Whether the file is there and is not as this program left it. */
    public boolean changedByOthers() {
        Stamp now = stamp();
        return now != null && !now.equals(known);
    }

    private Stamp stamp() {
        try {
            return new Stamp(Files.getLastModifiedTime(path), Files.size(path));
        } catch (IOException notThere) {
            return null;
        }
    }
}
