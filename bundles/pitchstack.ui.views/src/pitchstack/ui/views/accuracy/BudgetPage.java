// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import pitchstack.core.stack.AxisSpec;
import pitchstack.export.plot.BudgetBars;
import pitchstack.model.Target;
import pitchstack.ui.views.Busy;
import pitchstack.ui.views.PageWork;
import pitchstack.ui.views.SettingText;
import pitchstack.ui.views.targets.Fonts;

/** The budget of one setting: in a sentence, as a table, and as bars. */
final class BudgetPage implements AccuracyPage {
    private static final int PAUSE_MS = 250;
    private static final String FAILED = "The budget could not be worked out; what went wrong is in the program's log.";

    private final TwinPage page;
    private final Label head;
    private final Label where;
    private final BudgetForm form;
    private final BudgetTable table;
    private final PageWork work;
    private Looked looked;
    private Asked.Found found;

    BudgetPage(Composite parent) {
        page = new TwinPage(parent, "Bars of the budget");
        form = new BudgetForm(page.content(), TwinPage.COLUMNS, this::changed);
        Busy busy = new Busy(page.content(), TwinPage.COLUMNS, "Looking for the worst setting; Escape stops it",
                this::stop);
        head = page.line();
        head.setFont(new Fonts(head).bold());
        where = page.line();
        table = new BudgetTable(page.content(), TwinPage.COLUMNS, this::chosen);
        page.addToggle(page.content(), TwinPage.COLUMNS);
        TwinPage.say(page.line(), BudgetWords.CAUTIONS);
        work = new PageWork(page.control(), busy, this::ask);
        form.onEscape(this::stop);
    }

    @Override
    public Control control() {
        return page.control();
    }

    @Override
    public void show(Looked shown) {
        boolean same = shown.isSameAs(looked);
        looked = shown;
        if (!same) {
            nothing("");
        }
        form.offer(looked.session().axis().getTargets().stream().map(Target::getPosition).filter(Objects::nonNull)
                .toList());
        ask();
    }

    private void changed() {
        work.forget();
        if (form.ask() == BudgetForm.Ask.POSITION) {
            work.askAfter(PAUSE_MS);
        } else {
            ask();
        }
    }

    private void ask() {
        work.askNoMore();
        Looked at = looked;
        if (at == null) {
            return;
        }
        Asked asked = new Asked(at, form.ask(), form.position());
        String problem = asked.problem();
        if (!problem.isEmpty()) {
            work.forget();
            nothing(problem);
            return;
        }
        work.begin("Budget", asked::find, FAILED, this::nothing, this::found);
    }

    private void stop() {
        if (work.isBusy()) {
            work.forget();
            nothing("Stopped. Choose again what the budget is for.");
        }
    }

    private void nothing(String sentence) {
        found = null;
        TwinPage.say(head, sentence);
        TwinPage.say(where, "");
        table.show(List.of(), looked.sizes());
        page.chart().say("");
        page.sources("");
        page.layout();
    }

    private void found(Asked.Found now) {
        found = now;
        Sizes sizes = now.looked().sizes();
        TwinPage.say(head, new BudgetWords(sizes).head(now.figures(), now.ask()));
        TwinPage.say(where, place(now) + " Computed from what the file says; nothing here is a measurement.");
        table.show(now.figures().lines(), sizes);
        page.chart().show(new BudgetBars(now.figures().result()));
        chosen();
        page.layout();
        table.fit();
    }

    private static String place(Asked.Found now) {
        AxisSpec spec = now.looked().spec();
        return Stream.of(spec.scale().format(now.figures().position()) + " (" + SettingText.setting(spec, now.figures()
                .setting())
                + ").", now.remark()).filter(s -> !s.isEmpty()).reduce((a, b) -> a + " " + b).orElseThrow();
    }

    private void chosen() {
        if (found != null) {
            page.sources(new BudgetWords(found.looked().sizes()).sources(found.figures(), found.looked(),
                    table.chosen()));
        }
    }

    @Override
    public void rest() {
        work.rest();
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
