// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.TitleAreaDialog;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Spinner;
import org.eclipse.swt.widgets.Text;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;

/** Asks which teeth of a stage are worn or barred, or are to be supposed so. */
final class MarkTeethDialog extends TitleAreaDialog {
    /** The button, and the return code, of a mark that is only supposed. */
    static final int SUPPOSE = IDialogConstants.CLIENT_ID;

    private final Stage stage;
    private final Function<ToothMark, Optional<String>> refusal;
    private ToothMark mark;
    private Row row;
    private Spinner first;
    private Spinner last;
    private boolean lastGiven;
    private boolean following;
    private Button barred;
    private Text note;

    /**
     * @param mark what to begin with, on a stage with both rows
     * @param refusal why a mark cannot be supposed; empty where it can
     */
    MarkTeethDialog(Shell shell, ToothMark mark, Function<ToothMark, Optional<String>> refusal) {
        super(shell);
        this.stage = mark.stage();
        this.row = mark.row();
        this.mark = mark;
        this.refusal = refusal;
    }

    /** The mark that was asked for. */
    ToothMark mark() {
        return mark;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Mark Teeth");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        setTitle("Mark teeth of “" + stage.getName() + "”");
        Composite area = new Composite((Composite) super.createDialogArea(parent), SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(area);
        GridLayoutFactory.swtDefaults().numColumns(2).margins(12, 12).spacing(12, 8).applyTo(area);
        label(area, "&Row");
        Combo rows = new Combo(area, SWT.READ_ONLY);
        List<Row> choices = List.of(stage.getBaseRow(), stage.getRiderRow());
        rows.setItems("base row, " + choices.get(0).getTeeth() + " teeth",
                "rider row, " + choices.get(1).getTeeth() + " teeth");
        rows.select(choices.indexOf(row));
        label(area, "&First tooth");
        first = new Spinner(area, SWT.BORDER);
        label(area, "&Last tooth");
        last = new Spinner(area, SWT.BORDER);
        label(area, "Wear");
        Composite kinds = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(2).applyTo(kinds);
        Button worn = new Button(kinds, SWT.RADIO);
        worn.setText("&worn: used, and flagged");
        worn.setSelection(mark.kind() == WearKind.WORN);
        barred = new Button(kinds, SWT.RADIO);
        barred.setText("&barred: not used");
        barred.setSelection(mark.kind() == WearKind.BARRED);
        label(area, "&Note");
        note = new Text(area, SWT.BORDER);
        note.setText(mark.note());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(note);
        rows.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            row = choices.get(rows.getSelectionIndex());
            limit();
        }));
        limit();
        first.setSelection(mark.first());
        last.setSelection(mark.last());
        lastGiven = mark.first() != mark.last();
        first.addModifyListener(event -> follow());
        last.addModifyListener(event -> {
            lastGiven |= !following;
            check();
        });
        return area;
    }

    /** One tooth stays one tooth until its end is given, too. */
    private void follow() {
        following = true;
        last.setSelection(lastGiven ? Math.max(first.getSelection(), last.getSelection()) : first.getSelection());
        following = false;
        check();
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, SUPPOSE, "&Suppose", false)
                .setToolTipText("Shows in the views Wear and Coverage what it would cost; the file stays as it is.");
        createButton(parent, IDialogConstants.OK_ID, "Mark", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    private static void label(Composite parent, String text) {
        new Label(parent, SWT.NONE).setText(text);
    }

    private void limit() {
        first.setMaximum(Math.max(1, row.getTeeth() - 1));
        last.setMaximum(Math.max(1, row.getTeeth() - 1));
        setMessage("Teeth of this row are numbered from 0 to " + (row.getTeeth() - 1) + ".");
    }

    private void check() {
        boolean inOrder = first.getSelection() <= last.getSelection();
        setErrorMessage(inOrder ? null : "The last tooth, " + last.getSelection() + ", lies before the first, "
                + first.getSelection() + ".");
        getButton(IDialogConstants.OK_ID).setEnabled(inOrder);
        getButton(SUPPOSE).setEnabled(inOrder);
    }

    @Override
    protected void buttonPressed(int button) {
        if (button != SUPPOSE) {
            super.buttonPressed(button);
            return;
        }
        take();
        Optional<String> why = refusal.apply(mark);
        setErrorMessage(why.orElse(null));
        if (why.isEmpty()) {
            setReturnCode(SUPPOSE);
            close();
        }
    }

    @Override
    protected void okPressed() {
        take();
        super.okPressed();
    }

    private void take() {
        mark = new ToothMark(row, first.getSelection(), last.getSelection(),
                barred.getSelection() ? WearKind.BARRED : WearKind.WORN, note.getText());
    }
}
