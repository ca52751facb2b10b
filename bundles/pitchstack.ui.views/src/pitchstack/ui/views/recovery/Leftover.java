// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.recovery;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import pitchstack.edit.Differences;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/**
 * Work that was not saved when the program ended.
 *
 * @param copy where it was kept
 * @param file the file it belongs to; empty for a document that was in no file yet
 */
record Leftover(Path copy, Optional<Path> file) {
    private static final int MOST_LINES = 12;

    /** The work; empty, with a word in the log, if the copy cannot be read. */
    Optional<Positioner> positioner() {
        try {
            return Optional.of(StackFile.load(copy).positioner());
        } catch (StackFileException e) {
            ILog.of(Leftover.class).error("Unsaved work in " + copy + " cannot be read.", e);
            return Optional.empty();
        }
    }

    /** What is to be decided: which file, when the work was kept, and how it differs from the document that is open. */
    String question(Positioner work, Positioner open) {
        String name = file.map(path -> "“" + path.getFileName() + "”").orElse("A stack that was in no file yet");
        List<String> differences = Differences.between(open, work);
        StringBuilder text = new StringBuilder(name).append(" was changed and not saved when the program ended. The work was"
                + " kept on ").append(kept()).append(".\n\nIt differs from ")
                .append(file.isPresent() ? "the file" : "a new stack").append(" in ").append(differences.size())
                .append(differences.size() == 1 ? " place:" : " places:");
        differences.stream().limit(MOST_LINES).forEach(line -> text.append("\n    ").append(line));
        if (differences.size() > MOST_LINES) {
            text.append("\n    and ").append(differences.size() - MOST_LINES).append(" more");
        }
        return text.append("\n\nRecovering opens the work as a change that is not saved yet; Ctrl+Z takes it back.").toString();
    }

    private String kept() {
        try {
            Instant when = Files.getLastModifiedTime(copy).toInstant();
            return DateTimeFormatter.ofLocalizedDateTime(FormatStyle.MEDIUM, FormatStyle.SHORT)
                    .withZone(ZoneId.systemDefault()).format(when);
        } catch (IOException e) {
            return "a day that is not known";
        }
    }
}
