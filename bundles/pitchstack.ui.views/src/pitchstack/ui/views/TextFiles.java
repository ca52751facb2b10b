// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Shell;
import pitchstack.edit.Session;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/**
 * Asks for text files, reads and writes them, and says in a dialog what went wrong.
 *
 * @param shell where dialogs open
 * @param kind what such files are called in the dialogs, such as “Tables”
 * @param ending of their names, with the dot
 */
public record TextFiles(Shell shell, String kind, String ending) {
    /** Some hundred thousand rows. */
    private static final long MOST_BYTES = 16 << 20;

    /** Tables that spreadsheets read. */
    public static TextFiles tables(Shell shell) {
        return new TextFiles(shell, "Tables", ".csv");
    }

    /**
     * What was read.
     *
     * @param name of the file, without its folder
     * @param text all of it
     */
    public record Read(String name, String text) { }

    /**
     * Asks for a file and reads it.
     *
     * @param title of the dialogs
     * @return empty if none was chosen, or it could not be read, which was then said
     */
    public Optional<Read> read(String title) {
        String chosen = dialog(SWT.OPEN, title).open();
        return chosen == null ? Optional.empty() : read(title, Path.of(chosen));
    }

    private Optional<Read> read(String title, Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                fail(title, file.getFileName() + " is larger than a list may be, " + (MOST_BYTES >> 20) + " MB.");
                return Optional.empty();
            }
            return Optional.of(new Read(file.getFileName().toString(), Files.readString(file)));
        } catch (CharacterCodingException e) {
            fail(title, file.getFileName() + " is not text in UTF-8; save it as “CSV UTF-8”.");
        } catch (IOException e) {
            fail(title, file.getFileName() + " cannot be read (" + e.getMessage() + ").");
        }
        return Optional.empty();
    }

    /**
     * Asks for a name and writes a file; a file that is replaced is kept beside it.
     *
     * @param title of the dialogs
     * @param name what is proposed, without ending
     * @return where it was written; empty if it was not
     */
    public Optional<Path> write(String title, String name, String text) {
        FileDialog dialog = dialog(SWT.SAVE, title);
        dialog.setFileName(name + ending);
        String chosen = dialog.open();
        if (chosen == null) {
            return Optional.empty();
        }
        Path path = Path.of(chosen.toLowerCase(Locale.ROOT).endsWith(ending) ? chosen : chosen + ending);
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !MessageDialog.openQuestion(shell, "The file exists",
                path.getFileName() + " exists already. Replace it? The old one is kept as " + path.getFileName() + ".bak~.")) {
            return Optional.empty();
        }
        try {
            new SafeWrite(path).write(text.getBytes(StandardCharsets.UTF_8));
            return Optional.of(path);
        } catch (StackFileException e) {
            fail(title, e.getMessage());
            return Optional.empty();
        }
    }

    /** The name of a document's file without folder and ending. */
    public static String stackName(Session session) {
        URI place = session.document().getURI();
        return place == null ? "stack" : URI.decode(place.trimFileExtension().lastSegment());
    }

    private FileDialog dialog(int style, String title) {
        FileDialog dialog = new FileDialog(shell, style);
        dialog.setText(title);
        dialog.setFilterNames(new String[] {kind + " (*" + ending + ")", "All files"});
        dialog.setFilterExtensions(new String[] {"*" + ending, "*"});
        return dialog;
    }

    /** Says what went wrong. */
    public void fail(String title, String sentence) {
        MessageDialog.openError(shell, title, sentence);
    }
}
