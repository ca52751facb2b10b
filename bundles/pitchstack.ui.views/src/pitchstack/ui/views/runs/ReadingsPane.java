// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.layout.RowLayoutFactory;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.analysis.accuracy.Si;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Reading;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.Parts;
import pitchstack.ui.views.SettingText;

/** The readings of a run in a table, and when, with what and how warm they were taken. */
final class ReadingsPane implements RunPage {
    private static final int[] PARTS = {68, 32};

    private final Composite pane;
    private final Notice bad;
    private final Parts halves;
    private final Composite place;
    private final FactsForm facts;
    private final Label words;
    private final Runs runs;
    private final ReadingEdits edits;
    private final RunTexts texts;
    private ReadingTable table;

    ReadingsPane(Composite parent, Runs runs) {
        this.runs = runs;
        edits = new ReadingEdits(runs);
        pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 2).applyTo(pane);
        texts = new RunTexts(pane, runs, edits);
        buttons();
        bad = new Notice(pane, ISharedImages.IMG_OBJS_ERROR_TSK, 1);
        halves = new Parts(pane);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, 60).applyTo(halves.control());
        place = new Composite(halves.place(), SWT.NONE);
        place.setLayout(new FillLayout());
        ScrolledComposite scroll = new ScrolledComposite(halves.place(), SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        Composite side = new Composite(scroll, SWT.NONE);
        GridLayoutFactory.swtDefaults().margins(6, 0).applyTo(side);
        scroll.setContent(side);
        facts = new FactsForm(side, this::problem);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(facts.control());
        words = new Label(side, SWT.WRAP);
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(words);
        scroll.addListener(SWT.Resize, e -> Parts.fit(scroll));
        words.addListener(SWT.Resize, e -> Parts.fit(scroll));
        halves.free(place, PARTS[0]);
        halves.scrolling(scroll, PARTS[1]);
    }

    private void buttons() {
        Composite line = new Composite(pane, SWT.NONE);
        line.setLayout(RowLayoutFactory.fillDefaults().wrap(true).spacing(4).create());
        GridDataFactory.fillDefaults().grab(true, false).hint(60, SWT.DEFAULT).applyTo(line);
        button(line, "Add &Reading", "Adds a row at the setting of the last one, to be changed in the table (Insert)", this::add);
        button(line, "&Plan…", "Says which settings to measure, and puts them into the table to be filled in", this::plan);
        button(line, "Pa&ste", "Puts a column of numbers from the clipboard into the rows from the chosen one on, or adds a table"
                + " (Ctrl+V)", () -> texts.paste(first()));
        button(line, "&Import…", "Adds the readings of a CSV file", texts::read);
        button(line, "E&xport…", "Writes the readings, and rows still to be filled in, as a CSV file", texts::write);
        button(line, "Pr&int…", "Writes a page with all settings of the run to fill in by hand, and opens it to be printed",
                texts::print);
        button(line, "Delete", "Takes the chosen readings out (Delete)", this::delete);
    }

    private static void button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
    }

    @Override
    public Control control() {
        return pane;
    }

    @Override
    public void setFocus() {
        if (table != null) {
            table.control().setFocus();
        }
    }

    @Override
    public void show(Runs of) {
        List<ReadingColumn> kinds = ReadingColumn.of(runs.axis());
        if (table == null || !table.kinds().equals(kinds)) {
            renew(kinds);
        }
        table.show(runs.run().map(run -> List.copyOf(run.getReadings())).orElse(List.of()));
        facts.show(runs.session(), runs.run().orElse(null));
        halves.fit();
    }

    private void renew(List<ReadingColumn> kinds) {
        if (table != null) {
            table.control().dispose();
        }
        table = new ReadingTable(place, kinds, runs::session, this::problem);
        table.control().addListener(SWT.KeyDown, this::key);
        place.layout();
    }

    private void key(Event e) {
        int modifiers = e.stateMask & SWT.MODIFIER_MASK;
        if (e.keyCode == SWT.INSERT && modifiers == 0) {
            add();
        } else if (e.keyCode == SWT.DEL && modifiers == 0) {
            delete();
        } else if (e.keyCode == 'v' && modifiers == SWT.MOD1) {
            texts.paste(first());
        } else if (e.keyCode == 'c' && modifiers == SWT.MOD1) {
            texts.copy(table.chosen());
        }
    }

    private Optional<Reading> first() {
        return table.chosen().stream().findFirst();
    }

    private void add() {
        Reading reading = edits.add();
        show(runs);
        table.choose(List.of(reading));
        table.edit(reading, ReadingColumn.READING);
    }

    private void delete() {
        problem("");
        edits.delete(table.chosen());
    }

    private void plan() {
        PlanDialog dialog = new PlanDialog(pane.getShell(), runs.session().analysis().spec(),
                runs.session().analysis().current());
        if (dialog.open() == Window.OK) {
            edits.plan(dialog.lines());
            runs.run().ifPresent(run -> run.getReadings().stream().filter(one -> one.getValue() == null).findFirst()
                    .ifPresent(one -> table.choose(List.of(one))));
            setFocus();
        }
    }

    private void problem(String sentence) {
        if (!pane.isDisposed()) {
            bad.say(sentence);
            pane.layout();
        }
    }

    @Override
    public void found(RunStudy study) {
        MeasurementRun run = runs.run().orElseThrow();
        Set<Integer> outliers = new HashSet<>();
        study.fit().fit().ifPresent(fit -> IntStream.range(0, fit.residuals().size())
                .filter(i -> fit.residuals().get(i).outlier()).forEach(outliers::add));
        Map<Reading, String> off = new HashMap<>();
        for (int i = 0; i < study.run().readings().size(); i++) {
            Reading reading = run.getReadings().get(study.run().places().get(i));
            off.put(reading, (outliers.contains(i) ? "! " : "")
                    + SettingText.error(runs.scale(), Si.counts(study.run().deviationM(i), runs.scale())));
        }
        table.deviate(off);
        List<String> lines = new ArrayList<>(study.run().unreadable());
        if (study.run().open() > 0) {
            lines.add(0, study.run().open() + (study.run().open() == 1 ? " reading is" : " readings are") + " still to be read.");
        }
        lines.addAll(study.run().assumptions());
        words(String.join("\n", lines));
    }

    @Override
    public void say(String sentence) {
        if (table != null) {
            table.deviate(Map.of());
        }
        words(runs.run().isPresent() ? sentence : "New Run begins a run of measurements; Plan… says which settings to measure.");
    }

    private void words(String text) {
        words.setText(text.replace("&", "&&"));
        words.getParent().layout(true, true);
        halves.fit();
    }
}
