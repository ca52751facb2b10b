// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.analysis.accuracy.RunStudy;
import pitchstack.edit.AddElement;
import pitchstack.edit.RemoveElement;
import pitchstack.edit.SetPrintSpans;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PrintSetup;
import pitchstack.model.Span;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Chosen;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.Parts;

/** The scale of a print, from lengths measured on a part, and the factor to print it again with. */
final class PrintPane implements RunPage {
    private static final int[] PARTS = {30, 35, 35};
    private static final int GAP = 5;
    private static final int LEAST_LETTERS = 12;

    private final Runs runs;
    private final Composite pane;
    private final Parts parts;
    private final Combo setups;
    private final Button delete;
    private final Notice bad;
    private final FactsForm facts;
    private final SpanTable spans;
    private final Label words;
    private PrintSetup setup;

    PrintPane(Composite parent, Runs runs) {
        this.runs = runs;
        pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(0, 3).applyTo(pane);
        Composite line = Flow.in(pane, 1, GAP, true);
        new Label(line, SWT.NONE).setText("Print set-up");
        setups = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        Chosen.tell(setups, "Parts printed on one printer, in one direction and with one filament share their scale.");
        Accessibles.name(setups, "Print set-up");
        setups.setLayoutData(Flow.Room.atLeast(LEAST_LETTERS, setups));
        setups.addListener(SWT.Selection, e -> choose(all().get(setups.getSelectionIndex())));
        Composite buttons = Flow.together(line, GAP);
        button(buttons, "New S&et-up", "Begins a print set-up, to say what was measured on a part printed so", this::add);
        delete = button(buttons, "Delete", "Takes the print set-up out of the file", this::delete);
        bad = new Notice(pane, ISharedImages.IMG_OBJS_ERROR_TSK, 1);
        parts = new Parts(pane);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, 60).applyTo(parts.control());
        facts = new FactsForm(parts.place(), this::problem);
        spans = new SpanTable(parts.place(), this::measured, this::problem);
        words = new Label(parts.place(), SWT.WRAP);
        parts.wrapped(facts.control(), PARTS[0]);
        parts.whole(spans.control(), PARTS[1]);
        parts.wrapped(words, PARTS[2]);
    }

    private static Button button(Composite parent, String text, String tooltip, Runnable action) {
        Button button = new Button(parent, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
        return button;
    }

    private List<PrintSetup> all() {
        return runs.session().positioner().getPrintSetups();
    }

    private void choose(PrintSetup one) {
        setup = one;
        show(runs);
    }

    /** The first set-up is named as rows name theirs, where one does and has none yet. */
    private void add() {
        PrintSetup begun = PitchstackFactory.eINSTANCE.createPrintSetup();
        Set<String> taken = all().stream().map(PrintSetup::getName).collect(Collectors.toSet());
        begun.setName(PrintWords.named(runs.session().positioner()).stream().filter(name -> !taken.contains(name)).findFirst()
                .orElse("Set-up " + (all().size() + 1)));
        begun.setDate(LocalDate.now().toString());
        setup = begun;
        runs.session().run(AddElement.printSetup(runs.session().positioner(), begun));
    }

    private void delete() {
        if (setup != null) {
            runs.session().run(new RemoveElement(setup));
        }
    }

    private void measured(List<Span> all) {
        if (setup != null) {
            runs.session().run(new SetPrintSpans(setup, all));
        }
    }

    @Override
    public Control control() {
        return pane;
    }

    @Override
    public void setFocus() {
        if (setup == null) {
            setups.getParent().setFocus();
        } else {
            spans.setFocus();
        }
    }

    @Override
    public void show(Runs of) {
        if (!all().contains(setup)) {
            setup = all().isEmpty() ? null : all().get(0);
        }
        setups.setItems(all().stream().map(one -> String.valueOf(one.getName())).toArray(String[]::new));
        setups.select(all().indexOf(setup));
        setups.setEnabled(setup != null);
        delete.setEnabled(setup != null);
        facts.show(runs.session(), setup);
        spans.show(setup, runs.session());
        words.setText((setup == null ? "Measure a printed part over long spans, from a flank to another of the same hand so that "
                + "thick or thin printing does not count, along x and along y of the bed. New Set-up begins."
                : PrintWords.of(setup, runs.session().positioner())).replace("&", "&&"));
        pane.layout(true, true);
        parts.fit();
    }

    @Override
    public void found(RunStudy study) {
        // A run says nothing of a print.
    }

    @Override
    public void say(String sentence) {
        // A run says nothing of a print.
    }

    private void problem(String sentence) {
        if (!pane.isDisposed()) {
            bad.say(sentence);
            pane.layout();
        }
    }
}
