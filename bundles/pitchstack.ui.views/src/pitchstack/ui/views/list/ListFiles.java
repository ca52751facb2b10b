// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

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
import pitchstack.export.PlanCsv;
import pitchstack.export.TargetsCsv;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/** Reads targets from CSV files, and writes targets and plans to them. */
final class ListFiles {
    /** Some hundred thousand rows. */
    private static final long MOST_BYTES = 16 << 20;
    private static final String ENDING = ".csv";

    private final ListPlanning planning;
    private final ListTexts texts;

    ListFiles(ListPlanning planning, ListTexts texts) {
        this.planning = planning;
        this.texts = texts;
    }

    private Shell shell() {
        return planning.page().control().getShell();
    }

    /** Asks for a file, and adds its targets. */
    void read() {
        String chosen = dialog(SWT.OPEN, "Import Targets").open();
        if (chosen != null) {
            read(Path.of(chosen));
        }
    }

    private void read(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                fail("Import Targets", file.getFileName() + " is larger than a list of targets may be, "
                        + (MOST_BYTES >> 20) + " MB.");
                return;
            }
            texts.add(TargetsCsv.read(Files.readString(file), planning.session().analysis().spec().scale()), "Import",
                    file.getFileName().toString());
        } catch (CharacterCodingException e) {
            fail("Import Targets", file.getFileName() + " is not text in UTF-8; save it as “CSV UTF-8”.");
        } catch (IOException e) {
            fail("Import Targets", file.getFileName() + " cannot be read (" + e.getMessage() + ").");
        }
    }

    /** Asks for a file, and writes the plan as a table. */
    void writePlan() {
        Optional<ListPlan> plan = planning.plan();
        if (plan.isEmpty()) {
            fail("Export Plan", "There is no plan to write yet; wait until the list is planned, or add targets.");
            return;
        }
        write("Export Plan", "plan", PlanCsv.of(plan.get().axis(), plan.get().request().stops(),
                plan.get().planned().legs()));
    }

    /** Asks for a file, and writes the targets as a table that can be read again. */
    void writeTargets() {
        write("Export Targets", "targets", texts.targets());
    }

    private void write(String title, String what, String text) {
        FileDialog dialog = dialog(SWT.SAVE, title);
        dialog.setFileName(stackName() + "-" + what + ENDING);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Path path = Path.of(chosen.toLowerCase(Locale.ROOT).endsWith(ENDING) ? chosen : chosen + ENDING);
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !MessageDialog.openQuestion(shell(), "The file exists",
                path.getFileName() + " exists already. Replace it? The old one is kept as " + path.getFileName() + ".bak~.")) {
            return;
        }
        try {
            new SafeWrite(path).write(text.getBytes(StandardCharsets.UTF_8));
        } catch (StackFileException e) {
            fail(title, e.getMessage());
        }
    }

    private String stackName() {
        URI place = planning.session().document().getURI();
        return place == null ? "stack" : place.trimFileExtension().lastSegment();
    }

    private FileDialog dialog(int style, String title) {
        FileDialog dialog = new FileDialog(shell(), style);
        dialog.setText(title);
        dialog.setFilterNames(new String[] {"Tables (*.csv)", "All files"});
        dialog.setFilterExtensions(new String[] {"*.csv", "*"});
        return dialog;
    }

    private void fail(String title, String sentence) {
        MessageDialog.openError(shell(), title, sentence);
    }
}
