// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.wizard.WizardPage;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.start.ShopDefaults;
import pitchstack.edit.start.StackSummary;
import pitchstack.edit.start.StackWish;
import pitchstack.edit.start.StartingStack;
import pitchstack.model.file.StackFile;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.export.KeptChoices;

/** What comes of the wishes, worked out and not promised, and the file it goes into. */
final class ResultPage extends WizardPage {
    private static final int WIDTH = 560;
    private static final int LINES = 14;
    private static final KeptChoices KEPT = new KeptChoices("pitchstack.ui.views.start");
    private static final String FOLDER = "folder";

    private final WishPage wishes;
    private final ShopDefaults shop;
    private Text summary;
    private Text folder;
    private Text name;
    private StackWish shown;
    private Optional<StartingStack> stack = Optional.empty();
    private String obstacle;

    ResultPage(WishPage wishes, ShopDefaults shop) {
        super("result", "What comes of it", null);
        this.wishes = wishes;
        this.shop = shop;
        setPageComplete(false);
    }

    @Override
    public void createControl(Composite parent) {
        Composite page = new Composite(parent, SWT.NONE);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(12, 12).spacing(12, 8).applyTo(page);
        summary = new Text(page, SWT.MULTI | SWT.READ_ONLY | SWT.WRAP | SWT.V_SCROLL | SWT.BORDER);
        Accessibles.name(summary, "What the stack reaches and what has to be made");
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(WIDTH, LINES * summary.getLineHeight())
                .applyTo(summary);
        name = text(page, "File &name", freeName(kept()), 2);
        folder = text(page, "F&older", kept().toString(), 1);
        Button browse = new Button(page, SWT.PUSH);
        browse.setText("B&rowse…");
        browse.addListener(SWT.Selection, event -> browse());
        setControl(page);
    }

    private Text text(Composite page, String label, String value, int columns) {
        new Label(page, SWT.NONE).setText(label);
        Text text = new Text(page, SWT.BORDER);
        text.setText(value);
        Accessibles.name(text, label.replace("&", ""));
        GridDataFactory.fillDefaults().grab(true, false).span(columns, 1).applyTo(text);
        text.addListener(SWT.Modify, event -> check());
        return text;
    }

    /** The folder of the last time, while there is one. */
    private static Path kept() {
        Path home = Path.of(System.getProperty("user.home"));
        try {
            Path last = Path.of(KEPT.text(FOLDER));
            return last.isAbsolute() && Files.isDirectory(last) ? last : home;
        } catch (InvalidPathException fromAnotherSystem) {
            return home;
        }
    }

    /** Keeps the folder for the next time. */
    void keepFolder() {
        KEPT.keep(Map.of(FOLDER, file().getParent().toString()));
    }

    private static String freeName(Path where) {
        String free = "new-stack";
        for (int number = 2; Files.exists(where.resolve(free + "." + StackFile.EXTENSION)); number++) {
            free = "new-stack-" + number;
        }
        return free + "." + StackFile.EXTENSION;
    }

    private void browse() {
        DirectoryDialog dialog = new DirectoryDialog(getShell());
        dialog.setFilterPath(folder.getText());
        String chosen = dialog.open();
        if (chosen != null) {
            folder.setText(chosen);
        }
    }

    /** The stack; empty while there is none. */
    Optional<StartingStack> stack() {
        return stack;
    }

    /** The file to write; its name is complete. */
    Path file() {
        String typed = name.getText().strip();
        return Path.of(folder.getText().strip())
                .resolve(typed.endsWith("." + StackFile.EXTENSION) ? typed : typed + "." + StackFile.EXTENSION);
    }

    @Override
    public void setVisible(boolean visible) {
        super.setVisible(visible);
        if (visible && !wishes.wish().equals(shown)) {
            getShell().getDisplay().asyncExec(this::work);
        }
        if (visible) {
            name.setFocus();
        }
    }

    /** Away from the interface thread, with a button to cancel. */
    private void work() {
        StackWish wish = wishes.wish();
        StartingStack.Result[] found = new StartingStack.Result[1];
        try {
            getContainer().run(true, true,
                    monitor -> found[0] = StartingStack.of(wish, shop.costs(), new Monitored(monitor)));
        } catch (InvocationTargetException e) {
            throw new IllegalStateException(e.getCause());
        } catch (InterruptedException e) {
            found[0] = new StartingStack.NotMade("");
        }
        shown = wish;
        show(found[0]);
    }

    private void show(StartingStack.Result result) {
        stack = result instanceof StartingStack.Made made ? Optional.of(made.stack()) : Optional.empty();
        obstacle = result instanceof StartingStack.NotMade none
                ? none.sentence().isEmpty() ? "The work was cancelled; go back and on again to start it anew." : none.sentence()
                : null;
        summary.setText(stack.map(found -> String.join("\n\n", new StackSummary(found, shop).sentences())).orElse(obstacle));
        if (obstacle != null) {
            shown = null;
        }
        check();
    }

    private void check() {
        String complaint = obstacle != null ? "Nothing comes of it yet; what is in the way stands below." : complaint();
        setErrorMessage(complaint);
        setMessage("Worked out for this stack, over every setting of it. Finish writes the file and opens it.");
        setPageComplete(complaint == null && stack.isPresent());
    }

    private String complaint() {
        try {
            if (name.getText().isBlank()) {
                return "The file has no name yet; type one.";
            }
            if (folder.getText().isBlank()) {
                return "The folder is missing; type or choose one.";
            }
            Path file = file();
            if (!file.isAbsolute() || !Files.isDirectory(file.getParent())) {
                return "There is no folder " + folder.getText().strip() + "; choose one that exists.";
            }
            return Files.exists(file) ? file.getFileName() + " exists already; choose another name." : null;
        } catch (InvalidPathException e) {
            return "“" + name.getText() + "” cannot be the name of a file; leave out “" + e.getInput() + "”.";
        }
    }
}
