// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import pitchstack.core.stack.Setting;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.ui.tests.Names;

/** The view Accuracy over two printed stages, and a person at it. */
final class AccuracyDesk {
    static final List<String> PAGES = List.of("Budget", "Travel", "Preload", "Warmth");
    private static final String ID = "pitchstack.ui.views.accuracy";

    private static final String SOURCES = "&Where These Numbers Come From";
    private static final long SAID_MS = 15_000;
    private static final long WORK_MS = 60_000;

    private final Hands hands = new Hands();
    private final Bench bench;
    private final Shell shell;
    private final Session session;

    /** Opens it, on the page Budget. */
    AccuracyDesk(Path folder) {
        bench = new Bench(folder);
        shell = bench.shell();
        session = bench.open("printed", printed());
        bench.view(ID);
        page("Budget");
    }

    /** Opens another file. */
    void open(String name, Positioner positioner) {
        bench.open(name, positioner);
    }

    Hands hands() {
        return hands;
    }

    Shell shell() {
        return shell;
    }

    Session session() {
        return session;
    }

    /** Leaves everything as it is found. */
    void close() {
        page("Budget");
        hands.all(shell, Button.class, b -> b.isVisible() && b.getText().equals(SOURCES) && b.getSelection())
                .forEach(b -> push(SOURCES));
        choose("Setting of the budget", 0);
        bench.clear();
        bench.view("org.eclipse.ui.views.PropertySheet");
    }

    private static Positioner printed() {
        Positioner positioner = Stacks.millimetres();
        Axis axis = positioner.getAxes().get(0);
        axis.setDatumUncertainty("0.01 mm");
        for (Stage stage : axis.getStages()) {
            stage.setSource(StageSource.PRINTED);
            stage.setMaterial("PLA");
            stage.setScatter("30 um");
            stage.setSeatScatter("20 um");
            stage.setFriction(0.3);
            stage.getRiderRow().setTeeth(20);
            for (Row row : List.of(stage.getBaseRow(), stage.getRiderRow())) {
                row.setScaleUncertaintyPpm(1000);
                row.setFaceWidth("10 mm");
            }
        }
        return positioner;
    }

    /** Lets the window work until it says something. */
    void awaits(String sentence) {
        long end = System.currentTimeMillis() + SAID_MS;
        while (!says(sentence) && System.currentTimeMillis() < end) {
            hands.settle();
        }
        if (!says(sentence)) {
            throw new AssertionError("waited in vain for “" + sentence + "”; it says " + hands.all(shell, Label.class,
                    l -> l.isVisible() && l.getText().contains(" ")).stream().map(Label::getText).toList());
        }
    }

    /** The same for what takes some seconds of computing, on a busy machine many. */
    void awaitsWork(String sentence) {
        long end = System.currentTimeMillis() + WORK_MS;
        while (!says(sentence) && System.currentTimeMillis() < end) {
            hands.settle();
        }
        awaits(sentence);
    }

    /** Whether a visible line has these words. */
    boolean says(String words) {
        return !hands.all(shell, Label.class, l -> l.isVisible() && l.getText().contains(words)).isEmpty();
    }

    /** The visible control of a name. */
    <T extends Control> T named(Class<T> kind, String name) {
        return hands.the(shell, kind, c -> Names.of(c).equals(name));
    }

    /** The visible table whose first column is called so. */
    Table table(String firstColumn) {
        return hands.the(shell, Table.class, t -> t.getColumnCount() > 0 && t.getColumn(0).getText()
                .equals(firstColumn));
    }

    /** The texts of a line of a table; blank ones while there is no such line. */
    static List<String> cells(Table table, int line) {
        return table.getItemCount() <= line ? List.of("", "", "", "", "", "", "")
                : IntStream.range(0, table.getColumnCount()).mapToObj(table.getItem(line)::getText).toList();
    }

    /** The number at the beginning of a cell of a table. */
    double cell(String firstColumn, int line, int column) {
        return Double.parseDouble(cells(table(firstColumn), line).get(column).split(" ")[0]);
    }

    /** Types a number into a field. */
    void type(String field, String text) {
        named(Text.class, field).setText(text);
        hands.settle();
    }

    /** Moves a slider by a key, as a person does. */
    void slide(String name, int key) {
        Scale slider = named(Scale.class, name);
        hands.focus(slider);
        hands.key(0, key);
    }

    /** Chooses an item of a list. */
    void choose(String combo, int item) {
        Combo choice = named(Combo.class, combo);
        choice.select(item);
        choice.notifyListeners(SWT.Selection, new Event());
    }

    /** Presses a button. */
    void push(String text) {
        Button button = hands.the(shell, Button.class, b -> b.getText().equals(text));
        if ((button.getStyle() & SWT.TOGGLE) != 0) {
            button.setSelection(!button.getSelection());
        }
        button.notifyListeners(SWT.Selection, new Event());
        hands.settle();
    }

    /** Shows a page by its button. */
    void page(String title) {
        hands.page(shell, PAGES, title);
    }

    /** Whether the first colour of charts is seen on a canvas. */
    boolean inked(String name) {
        Canvas canvas = named(Canvas.class, name);
        Point size = canvas.getSize();
        Image image = new Image(canvas.getDisplay(), size.x, size.y);
        GC gc = new GC(canvas);
        gc.copyArea(image, 0, 0);
        gc.dispose();
        ImageData data = image.getImageData();
        image.dispose();
        int found = 0;
        for (int y = 0; y < data.height; y++) {
            for (int x = 0; x < data.width; x++) {
                RGB rgb = data.palette.getRGB(data.getPixel(x, y));
                found += Math.abs(rgb.red - 0x1f) < 3 && Math.abs(rgb.green - 0x4e) < 3 && Math.abs(rgb.blue - 0x79) < 3
                        ? 1 : 0;
            }
        }
        return found > 50;
    }
}
