// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.chart;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.ImageTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.FileDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import pitchstack.export.plot.Palette;
import pitchstack.export.plot.Picture;
import pitchstack.export.plot.Plot;
import pitchstack.export.plot.PlotLook;
import pitchstack.model.file.SafeWrite;
import pitchstack.model.file.StackFileException;

/** Copies a chart and saves it, by the menu at the pointer or by keys. */
final class ChartHands {
    private static final String ENDING = ".png";
    /** What is kept is looked at closer, and printed. */
    private static final double KEPT_SCALE = 2;

    private final Canvas canvas;
    private final Supplier<Optional<Plot>> plot;

    ChartHands(Canvas canvas, Supplier<Optional<Plot>> plot) {
        this.canvas = canvas;
        this.plot = plot;
        Menu menu = new Menu(canvas);
        MenuItem copy = item(menu, "&Copy Picture\tCtrl+C", this::copy);
        MenuItem save = item(menu, "&Save Picture…", this::save);
        menu.addListener(SWT.Show, e -> {
            copy.setEnabled(plot.get().isPresent());
            save.setEnabled(plot.get().isPresent());
        });
        canvas.setMenu(menu);
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.MouseDown, e -> canvas.setFocus());
        canvas.setToolTipText("The menu here (right button, or Shift+F10) copies and saves the picture.");
    }

    private static MenuItem item(Menu menu, String text, Runnable run) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> run.run());
        return item;
    }

    private void key(Event e) {
        if (e.keyCode == 'c' && (e.stateMask & SWT.MODIFIER_MASK) == SWT.MOD1) {
            copy();
        }
    }

    /** The picture as it is kept: on light ground, as paper is. */
    private Optional<Picture> picture() {
        return plot.get().flatMap(shown -> ChartLook.of(canvas).map(look -> shown.draw(
                new PlotLook(look.width(), look.height(), KEPT_SCALE, look.textPt(), Palette.LIGHT))));
    }

    private void copy() {
        picture().ifPresent(picture -> {
            Clipboard clipboard = new Clipboard(canvas.getDisplay());
            ImageData data = ChartLook.data(picture);
            clipboard.setContents(new Object[] {data}, new Transfer[] {ImageTransfer.getInstance()});
            clipboard.dispose();
        });
    }

    private void save() {
        FileDialog dialog = new FileDialog(canvas.getShell(), SWT.SAVE);
        dialog.setText("Save Picture");
        dialog.setFilterNames(new String[] {"Pictures (*.png)", "All files"});
        dialog.setFilterExtensions(new String[] {"*.png", "*"});
        dialog.setFileName("chart" + ENDING);
        String chosen = dialog.open();
        if (chosen == null) {
            return;
        }
        Path path = Path.of(chosen.toLowerCase(Locale.ROOT).endsWith(ENDING) ? chosen : chosen + ENDING);
        if (Files.exists(path, LinkOption.NOFOLLOW_LINKS) && !MessageDialog.openQuestion(canvas.getShell(),
                "The file exists",
                path.getFileName() + " exists already. Replace it? The old one is kept as " + path.getFileName()
                + ".bak~.")) {
            return;
        }
        picture().ifPresent(picture -> write(path, picture));
    }

    private void write(Path path, Picture picture) {
        try {
            new SafeWrite(path).write(picture.png());
        } catch (StackFileException e) {
            MessageDialog.openError(canvas.getShell(), "Save Picture", e.getMessage());
        }
    }
}
