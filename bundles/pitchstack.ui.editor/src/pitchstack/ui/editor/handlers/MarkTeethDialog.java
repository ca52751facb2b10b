// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.List;
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
import pitchstack.edit.NewStack;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** Asks which teeth of a stage are worn or barred. */
final class MarkTeethDialog extends TitleAreaDialog {
    private final Stage stage;
    private final int tooth;
    private Row row;
    private Spinner first;
    private Spinner last;
    private Button barred;
    private Text note;
    private WornRange range;

    /**
     * @param stage whose teeth are marked
     * @param row the row to begin with
     * @param tooth the tooth to begin with
     */
    MarkTeethDialog(Shell shell, Stage stage, Row row, int tooth) {
        super(shell);
        this.stage = stage;
        this.row = row;
        this.tooth = tooth;
    }

    /** The row that was chosen. */
    Row row() {
        return row;
    }

    /** The mark that was asked for. */
    WornRange range() {
        return range;
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
        worn.setSelection(true);
        barred = new Button(kinds, SWT.RADIO);
        barred.setText("&barred: not used");
        label(area, "&Note");
        note = new Text(area, SWT.BORDER);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(note);
        rows.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            row = choices.get(rows.getSelectionIndex());
            limit();
        }));
        limit();
        first.setSelection(tooth);
        last.setSelection(tooth);
        first.addModifyListener(event -> {
            last.setSelection(Math.max(first.getSelection(), last.getSelection()));
            check();
        });
        last.addModifyListener(event -> check());
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
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
    }

    @Override
    protected void okPressed() {
        range = NewStack.wornRange(first.getSelection());
        range.setLast(last.getSelection());
        range.setKind(barred.getSelection() ? WearKind.BARRED : WearKind.WORN);
        range.setNote(note.getText().isBlank() ? null : note.getText().strip());
        super.okPressed();
    }
}
