// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.tour;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.part.ViewPart;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.ActiveSession;
import pitchstack.ui.views.BesideEditor;
import pitchstack.ui.views.Commands;
import pitchstack.ui.views.HistoryActions;
import pitchstack.ui.views.coverage.CoverageView;
import pitchstack.ui.views.targets.TargetView;
import pitchstack.ui.views.welcome.Examples;

/** The view First Tour: what to do next, and what is done. It watches the window and goes on by itself. */
public final class TourView extends ViewPart {
    /** Id of this view. */
    public static final String ID = "pitchstack.ui.views.tour";
    private static final String FENCE = "cross-cut-fence";
    /** Views come and go without telling; a look costs next to nothing. */
    private static final int EVERY_MS = 500;
    /** The text wraps in whatever width the view has; this is the least it asks for. */
    private static final int NARROW = 120;

    private final Tour tour = new Tour();
    private final List<Label> titles = new ArrayList<>();
    private ActiveSession active;
    private HistoryActions history;
    private Composite page;
    private ScrolledComposite scroll;
    private Label how;
    private Button help;
    private Button skip;
    private Font bold;

    @Override
    public void createPartControl(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        page = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(8, 8).spacing(8, 6).applyTo(page);
        bold = FontDescriptor.createFrom(page.getFont()).setStyle(SWT.BOLD).createFont(page.getDisplay());
        page.addDisposeListener(event -> bold.dispose());
        for (int i = 0; i < tour.steps().size(); i++) {
            Label title = new Label(page, SWT.WRAP);
            GridDataFactory.fillDefaults().grab(true, false).applyTo(title);
            int step = i;
            Accessibles.name(title, () -> tour.steps().get(step).title()
                    + (step < tour.current() ? ", done" : step == tour.current() ? ", to do now" : ", later"));
            titles.add(title);
        }
        how = new Label(page, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).indent(0, 6).hint(NARROW, SWT.DEFAULT).applyTo(how);
        help = button(page, "", this::help);
        Composite ways = new Composite(page, SWT.NONE);
        RowLayoutFactory.fillDefaults().spacing(8).applyTo(ways);
        GridDataFactory.fillDefaults().grab(true, false).hint(NARROW, SWT.DEFAULT).applyTo(ways);
        skip = button(ways, "&Skip this step", tour::skip);
        button(ways, "Start &over", tour::restart);
        scroll.setContent(page);
        scroll.addListener(SWT.Resize, event -> size());
        active = new ActiveSession(getSite().getPage(), this::changed, change -> changed());
        history = new HistoryActions(active, getViewSite().getActionBars());
        look();
        show();
        page.getDisplay().timerExec(EVERY_MS, this::lookAgain);
    }

    private Button button(Composite parent, String text, Runnable what) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.addListener(SWT.Selection, event -> {
            what.run();
            show();
            look();
        });
        return button;
    }

    private void lookAgain() {
        if (!page.isDisposed()) {
            look();
            page.getDisplay().timerExec(EVERY_MS, this::lookAgain);
        }
    }

    private void changed() {
        if (history != null) {
            history.update();
        }
        look();
    }

    private void look() {
        if (active != null && tour.look(new TourSight(active.session(), tolerance()))) {
            show();
        }
    }

    private Optional<String> tolerance() {
        IWorkbenchPage where = getSite().getPage();
        return where.findView(CoverageView.ID) instanceof CoverageView view && where.isPartVisible(view)
                ? Optional.of(view.tolerance()) : Optional.empty();
    }

    private void show() {
        for (int i = 0; i < titles.size(); i++) {
            Label title = titles.get(i);
            String mark = i < tour.current() ? "✓  " : i == tour.current() ? "→  " : "    ";
            title.setText(mark + (i + 1) + ".  " + tour.steps().get(i).title());
            title.setFont(i == tour.current() ? bold : page.getFont());
        }
        boolean over = tour.isOver();
        how.setText(over ? "That was the tour. File > Design a New Stack… makes one of your own, the user guide (F1)"
                + " tells the rest, and Help > Keys lists every key."
                : tour.steps().get(tour.current()).how());
        String text = over ? "" : tour.steps().get(tour.current()).help();
        help.setText(text);
        help.setVisible(!text.isEmpty());
        GridDataFactory.swtDefaults().exclude(text.isEmpty()).applyTo(help);
        skip.setEnabled(!over);
        page.layout();
        size();
    }

    private void size() {
        scroll.setMinHeight(page.computeSize(scroll.getClientArea().width, SWT.DEFAULT).y);
    }

    private void help() {
        switch (tour.current()) {
            case 0 -> Examples.file(FENCE).ifPresent(file -> new Commands(getSite()).run(Commands.OPEN_COPY,
                    Map.of(Commands.PATH, file.toString())));
            case 3 -> go(TargetView.ID);
            default -> go(CoverageView.ID);
        }
    }

    private void go(String view) {
        try {
            getSite().getPage().showView(view);
        } catch (PartInitException e) {
            how.setText("This view cannot be shown: " + e.getMessage());
        }
    }

    @Override
    public void setFocus() {
        (help.isVisible() ? help : skip).setFocus();
    }

    @Override
    public <T> T getAdapter(Class<T> type) {
        T beside = BesideEditor.adapter(type, getSite().getPage());
        return beside != null ? beside : super.getAdapter(type);
    }

    @Override
    public void dispose() {
        if (active != null) {
            active.dispose();
        }
        super.dispose();
    }
}
