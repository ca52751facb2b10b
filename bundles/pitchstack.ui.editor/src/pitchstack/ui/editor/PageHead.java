// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.TextLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.ui.editor.parts.CarriageWords;
import pitchstack.ui.editor.parts.SideView;
import pitchstack.ui.editor.parts.StageWords;

/** The line above the drawing: where the carriage stands, which axis is looked at, and the zoom. */
final class PageHead {
    /** What the large letters of the position leave room for. */
    private static final int NOTE_LINES = 2;
    private static final int POSITION_LARGER_BY = 9;

    private final Session session;
    private final Composite line;
    private final Label position;
    private final Label note;
    private final Label axisLabel;
    private final Combo axes;
    private final PlaybackBar playback;
    private final StackPage page;
    private String noted = "";

    PageHead(Composite parent, Session session, StackPage page) {
        this.session = session;
        this.page = page;
        line = new Composite(parent, SWT.NONE);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(line);
        GridLayoutFactory.fillDefaults().numColumns(6).margins(14, 4).spacing(12, 0).applyTo(line);
        position = new Label(line, SWT.NONE);
        Font large = FontDescriptor.createFrom(position.getFont()).increaseHeight(POSITION_LARGER_BY).setStyle(SWT.BOLD)
                .createFont(line.getDisplay());
        position.setFont(large);
        position.addDisposeListener(event -> large.dispose());
        note = new Label(line, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(1, 1).applyTo(note);
        note.addListener(SWT.Resize, event -> fitNote());
        playback = new PlaybackBar(line, page);
        axisLabel = new Label(line, SWT.NONE);
        axisLabel.setText("&Axis");
        axes = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        axes.setToolTipText("The axis that is drawn");
        axes.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> look()));
        ToolBar bar = new ToolBar(line, SWT.FLAT);
        button(bar, "zoom-out", "Zoom out (Ctrl+−)", () -> page.view().zoom(1 / SideView.ZOOM_STEP));
        button(bar, "fit", "Fit the whole travel into the window (Ctrl+0)", () -> page.view().fit());
        button(bar, "zoom-in", "Zoom in (Ctrl++)", () -> page.view().zoom(SideView.ZOOM_STEP));
        update();
    }

    private static void button(ToolBar bar, String icon, String tip, Runnable action) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        Image image = ImageDescriptor.createFromURL(PageHead.class.getResource("/icons/" + icon + ".svg")).createImage();
        item.setImage(image);
        item.addDisposeListener(event -> image.dispose());
        item.setToolTipText(tip);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
    }

    private void look() {
        session.look(session.positioner().getAxes().get(axes.getSelectionIndex()));
    }

    /** Takes up a change of the session. */
    void update() {
        if (line.isDisposed()) {
            return;
        }
        playback.update(page.playback());
        AxisSpec spec = session.analysis().spec();
        position.setText(CarriageWords.position(session.analysis(), session.shown()));
        String words = note(spec);
        noted = words;
        note.setToolTipText(words.isEmpty() ? null : words);
        List<Axis> all = session.positioner().getAxes();
        String[] names = all.stream().map(axis -> axis.getName() == null ? "" : axis.getName()).toArray(String[]::new);
        boolean renamed = !Arrays.equals(names, axes.getItems());
        if (renamed) {
            axes.setItems(names);
        }
        axes.select(all.indexOf(session.axis()));
        boolean several = all.size() > 1;
        if (renamed || axes.getVisible() != several) {
            for (Control control : List.of(axisLabel, axes)) {
                control.setVisible(several);
                GridDataFactory.swtDefaults().exclude(!several).applyTo(control);
            }
            line.layout();
        }
        // Measuring all bars anew takes longer than painting the stack, and a drag comes here at every tooth.
        line.layout(new Control[] {position});
        fitNote();
    }

    /** Where it does not all fit into the lines beside the position, it ends in an ellipsis, and the tip has the rest. */
    private void fitNote() {
        TextLayout lines = new TextLayout(note.getDisplay());
        lines.setFont(note.getFont());
        lines.setWidth(Math.max(1, note.getSize().x - 1));
        lines.setText(noted);
        for (int kept = noted.length(); kept > 0 && lines.getLineCount() > NOTE_LINES; kept--) {
            lines.setText(noted.substring(0, kept - 1).stripTrailing() + "…");
        }
        int height = lines.getBounds().height;
        note.setText(lines.getText().replace("&", "&&"));
        lines.dispose();
        GridData data = (GridData) note.getLayoutData();
        if (data.heightHint != height) {
            data.heightHint = height;
            line.layout(new Control[] {note});
        }
    }

    private String note(AxisSpec spec) {
        if (page.playback() != null && page.playback().isPlaying()) {
            return page.playback().words();
        }
        Wear wear = spec.wearAt(session.shown());
        String worn = switch (wear) {
            case CLEAN -> "";
            case WORN -> "worn teeth engaged";
            case BARRED -> "barred teeth engaged";
        };
        String beyond = StageWords.beyond(spec, session.shown());
        if (session.preview().isEmpty() || session.analysis().position(session.shown()).isEmpty()) {
            return joined(worn, beyond, proposed(spec));
        }
        long from = spec.position(session.analysis().current());
        String moved = TrueMinus.in(spec.scale().formatError(spec.scale().difference(spec.position(session.shown()), from)) + " from "
                + spec.scale().format(from));
        return joined(moved, worn, beyond);
    }

    /** What the dashed outlines in the drawing stand for. */
    private String proposed(AxisSpec spec) {
        return session.proposal().filter(move -> !move.steps().isEmpty())
                .map(move -> TrueMinus.in("dashed: " + spec.scale().format(move.position()))).orElse("");
    }

    private static String joined(String... parts) {
        return Stream.of(parts).filter(part -> !part.isEmpty()).collect(Collectors.joining(", "));
    }
}
