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
import pitchstack.ui.editor.StackPage;

/** Shows the page as it will be printed, upright or across, and asks what to print, and for the printer. */
final class PrintPreview extends Dialog {
    private static final int CANVAS = 420;
    private static final int EDGE = 12;

    private final StackPage page;
    private final String file;
    private ImageData drawing;
    private PrinterData printer;
    private Rectangle paper;
    private PageFit fit;
    private Canvas canvas;
    private Label said;

    PrintPreview(Shell shell, StackPage page, String file, PrinterData printer) {
        super(shell);
        this.page = page;
        this.file = file;
        drawing = Picture.forPaper(page, file, true);
        this.printer = printer;
        printer.orientation = drawing.width > drawing.height ? PrinterData.LANDSCAPE : PrinterData.PORTRAIT;
    }

    /** What is to be printed. */
    ImageData drawing() {
        return drawing;
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
        GridLayoutFactory.swtDefaults().margins(12, 12).applyTo(area);
        Composite what = group(area, "Print");
        radio(what, "the &whole axis", true, () -> draw(true));
        radio(what, "what is &seen in the window", false, () -> draw(false));
        Composite turned = group(area, "Page");
        turn(turned, "&upright", PrinterData.PORTRAIT);
        turn(turned, "&across", PrinterData.LANDSCAPE);
        canvas = new Canvas(area, SWT.DOUBLE_BUFFERED);
        GridDataFactory.fillDefaults().grab(true, true).hint(CANVAS, CANVAS).applyTo(canvas);
        canvas.addListener(SWT.Paint, event -> paint(event.gc));
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "Preview of the page. " + said.getText();
            }
        });
        said = new Label(area, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(said);
        measure();
        return area;
    }

    /** Choices of which one holds; those of another line are another question. */
    private static Composite group(Composite area, String text) {
        Composite line = new Composite(area, SWT.NONE);
        GridLayoutFactory.fillDefaults().numColumns(3).applyTo(line);
        new Label(line, SWT.NONE).setText(text);
        return line;
    }

    private void turn(Composite line, String text, int orientation) {
        radio(line, text, printer.orientation == orientation, () -> {
            printer.orientation = orientation;
            measure();
        });
    }

    private static void radio(Composite line, String text, boolean chosen, Runnable choose) {
        Button button = new Button(line, SWT.RADIO);
        button.setText(text);
        button.setSelection(chosen);
        button.addListener(SWT.Selection, event -> {
            if (button.getSelection()) {
                choose.run();
            }
        });
    }

    private void draw(boolean whole) {
        drawing = Picture.forPaper(page, file, whole);
        measure();
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
        Rectangle sheet = new PageFit(seen, EDGE).place(paper.width, paper.height);
        double scale = (double) sheet.width / paper.width;
        gc.setBackground(getShell().getDisplay().getSystemColor(SWT.COLOR_WHITE));
        gc.fillRectangle(sheet);
        gc.setForeground(getShell().getDisplay().getSystemColor(SWT.COLOR_WIDGET_NORMAL_SHADOW));
        gc.drawRectangle(sheet);
        Rectangle place = fit.place(drawing.width, drawing.height);
        Image image = new Image(getShell().getDisplay(), drawing);
        gc.setInterpolation(SWT.HIGH);
        gc.drawImage(image, 0, 0, drawing.width, drawing.height, sheet.x + (int) (place.x * scale),
                sheet.y + (int) (place.y * scale), Math.max(1, (int) (place.width * scale)),
                Math.max(1, (int) (place.height * scale)));
        image.dispose();
    }
}
