// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import java.util.function.Consumer;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import pitchstack.ui.editor.parts.Playback;

/** The buttons that show a proposed move step by step; seen only while there is one. */
final class PlaybackBar {
    private final ToolBar bar;
    private final ToolItem play;
    private final ToolItem end;
    private final Image playing;
    private final Image paused;

    PlaybackBar(Composite parent, StackPage page) {
        bar = new ToolBar(parent, SWT.FLAT);
        playing = image("pause");
        paused = image("play");
        play = button(paused, page, Playback::toggle);
        Image step = image("step");
        button(step, page, Playback::step).setToolTipText("Show the next step of the proposed move, and pause (F7)");
        Image stop = image("end");
        end = button(stop, page, Playback::stop);
        end.setToolTipText("Stop, and show again where the stages stand");
        bar.addDisposeListener(event -> {
            for (Image image : new Image[] {playing, paused, step, stop}) {
                image.dispose();
            }
        });
    }

    private static Image image(String icon) {
        return ImageDescriptor.createFromURL(PlaybackBar.class.getResource("/icons/" + icon + ".svg")).createImage();
    }

    private ToolItem button(Image image, StackPage page, Consumer<Playback> action) {
        ToolItem item = new ToolItem(bar, SWT.PUSH);
        item.setImage(image);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.accept(page.playback())));
        return item;
    }

    /** Takes up a change; {@code null} while nothing is drawn yet. */
    void update(Playback playback) {
        boolean possible = playback != null && playback.isPossible();
        boolean running = playback != null && playback.isRunning();
        play.setImage(running ? playing : paused);
        play.setToolTipText(running ? "Pause (F6)" : "Show the proposed move step by step (F6)");
        end.setEnabled(playback != null && playback.isPlaying());
        bar.setVisible(possible);
        GridDataFactory.swtDefaults().exclude(!possible).applyTo(bar);
    }
}
