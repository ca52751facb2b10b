// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.emf.common.util.URI;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.Session;
import pitchstack.ui.views.Accessibles;

/** Where a file goes: its name, its folder, and whether one that is there already may be replaced. */
final class FileFields {
    private final Text name;
    private final Text folder;
    private final Button replace;
    private String ending = "";

    /**
     * @param fields of two columns
     * @param session whose file gives folder and name to begin with
     * @param behind what is put behind that name, such as “-card”; may be empty
     * @param changed called after each change
     */
    FileFields(Composite fields, Session session, String behind, Runnable changed) {
        Optional<Path> stack = Optional.ofNullable(session.document().getURI()).filter(URI::isFile)
                .map(uri -> Path.of(uri.toFileString()).toAbsolutePath());
        name = text(fields, "File &name", stack.map(path -> stem(path.getFileName().toString())).orElse("stack") + behind,
                changed);
        folder = text(fields, "Fo&lder", stack.map(Path::getParent).orElse(Path.of(System.getProperty("user.home"))).toString(),
                changed);
        new Label(fields, SWT.NONE);
        Button browse = new Button(fields, SWT.PUSH);
        browse.setText("B&rowse…");
        browse.addListener(SWT.Selection, event -> browse());
        new Label(fields, SWT.NONE);
        replace = new Button(fields, SWT.CHECK);
        replace.setText("R&eplace a file that is there");
        replace.setToolTipText("The old file is kept beside the new one, with .bak~ behind its name");
        replace.addListener(SWT.Selection, event -> changed.run());
    }

    private static Text text(Composite fields, String label, String value, Runnable changed) {
        new Label(fields, SWT.NONE).setText(label);
        Text text = new Text(fields, SWT.BORDER);
        text.setText(value);
        Accessibles.name(text, label.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).applyTo(text);
        text.addListener(SWT.Modify, event -> changed.run());
        return text;
    }

    private void browse() {
        DirectoryDialog dialog = new DirectoryDialog(folder.getShell());
        dialog.setFilterPath(folder.getText());
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    /** Gives the name another ending, without the point. */
    void end(String with) {
        String typed = name.getText().strip();
        String bare = typed.endsWith("." + ending) ? typed.substring(0, typed.length() - ending.length() - 1) : typed;
        ending = with;
        name.setText(bare + "." + with);
    }

    /** The file; its name is complete. */
    Path path() {
        String typed = name.getText().strip();
        return Path.of(folder.getText().strip()).resolve(typed.endsWith("." + ending) ? typed : typed + "." + ending);
    }

    /** What is wrong with it, in one sentence; empty where it can be written. */
    Optional<String> complaint() {
        try {
            if (name.getText().isBlank() || name.getText().strip().equals("." + ending)) {
                return Optional.of("The file has no name yet; type one.");
            }
            Path path = path();
            if (!path.isAbsolute() || !Files.isDirectory(path.getParent())) {
                return Optional.of("There is no folder " + folder.getText().strip() + "; choose one that exists.");
            }
            return Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !replace.getSelection() ? Optional.of(path.getFileName()
                    + " exists already; choose another name, or tick “Replace a file that is there”.") : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.of("“" + name.getText() + "” cannot be the name of a file; leave out “" + e.getInput() + "”.");
        }
    }
}
