// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import java.util.Locale;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.printing.PrintDialog;
import org.eclipse.swt.printing.Printer;
import org.eclipse.swt.printing.PrinterData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;

/** Shows the page as it will be printed, upright or across, and asks for the printer. */
final class PrintPreview extends Dialog {
    private static final int CANVAS = 420;
    private static final int EDGE = 12;

    private final ImageData drawing;
    private PrinterData printer;
    private Rectangle paper;
    private PageFit fit;
    private Canvas canvas;
    private Label said;

    PrintPreview(Shell shell, ImageData drawing, PrinterData printer) {
        super(shell);
        this.drawing = drawing;
        this.printer = printer;
        printer.orientation = drawing.width > drawing.height ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
    }

    /** The printer that was chosen, with its page turned as chosen. */
    PrinterData printer() {
        return printer;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText("Print");
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        GridLayoutFactory.swtDefaults().numColumns(3).margins(12, 12).applyTo(area);
        new Label(area, SWT.NONE).setText("Page");
        turn(area, "&upright", PrinterData.PORTRAIT);
        turn(area, "&across", PrinterData.LANDSCAPE);
        canvas = new Canvas(area, SWT.DOUBLE_BUFFERED);
        GridDataFactory.fillDefaults().grab(true, true).span(3, 1).hint(CANVAS, CANVAS).applyTo(canvas);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "Preview of the page. " + said.getText();
            }
        });
        said = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).applyTo(said);
        measure();
        return area;
    }

    private void turn(Composite area, String text, int orientation) {
        Button button = new Button(area, SWT.RADIO);
        button.setText(text);
        button.setSelection(printer.orientation == orientation);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                printer.orientation = orientation;
                measure();
            }
        });
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.DETAILS_ID, "Pr&inter…", false);
        createButton(parent, IDialogConstants.OK_ID, "&Print", true);
        createButton(parent, IDialogConstants.CANCEL_ID, IDialogConstants.CANCEL_LABEL, false);
    }

    @Override
    protected void buttonPressed(int id) {
        if (id == IDialogConstants.DETAILS_ID) {
            choosePrinter();
        } else {
            super.buttonPressed(id);
        }
    }

    private void choosePrinter() {
        PrintDialog dialog = new PrintDialog(getShell());
        dialog.setPrinterData(printer);
        PrinterData chosen = dialog.open();
        if (chosen != null) {
            chosen.orientation = printer.orientation;
            printer = chosen;
            measure();
        }
    }

    private void measure() {
        Printer device = new Printer(printer);
        paper = device.getBounds();
        fit = PrintedPage.fit(device);
        double inches = (double) fit.place(drawing.width, drawing.height).width / device.getDPI().x;
        said.setText("On " + (printer.name == null ? "the usual printer" : printer.name)
                + String.format(Locale.ROOT, "; the drawing will be %.0f mm wide.", inches * 25.4));
        device.dispose();
        canvas.redraw();
    }

    private void paint(GC gc) {
        Rectangle seen = canvas.getClientArea();
        Rectangle page = new PageFit(seen, EDGE).place(paper.width, paper.height);
        double scale = (double) page.width / paper.width;
        gc.setBackground(getShell().getDisplay().getSystemColor(SWT.COLOR_WHITE));
        gc.fillRectangle(page);
        gc.setForeground(getShell().getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.drawRectangle(page);
        Rectangle place = fit.place(drawing.width, drawing.height);
        Image image = new Image(getShell().getDisplay(), drawing);
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(image, 0, 0, drawing.width, drawing.height, page.x + (int) (place.x * scale),
                page.y + (int) (place.y * scale), Math.max(1, (int) (place.width * scale)),
                Math.max(1, (int) (place.height * scale)));
        image.dispose();
    }
}
