// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.ISharedImages;
import pitchstack.analysis.accuracy.JointReader;
import pitchstack.analysis.accuracy.JointTeeth;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.export.plot.BearingPlot;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.targets.Fonts;

/** What preload and softer teeth do to one joint; nothing here changes the file. */
final class TeethPage implements AccuracyPage {
    private static final int POINTS = 60;
    private static final int GAP = 5;
    /** The slider reaches a little farther than where 97.7 % of the solid teeth bear, not less than a hand's push. */
    private static final double SLIDER_PART = 1.2;
    private static final double SLIDER_SHARE = 0.977249868;
    private static final double LEAST_SLIDER_N = 20;

    private final TwinPage page;
    private final Combo stage;
    private final Notice bad;
    private final TeethForm form;
    private final Label head;
    private final Label more;
    private final VariantTable variants;
    private final Label friction;
    private final ChanceCheck chance;
    private Looked looked;
    private JointTeeth teeth;
    private double mostN;

    TeethPage(Composite parent) {
        page = new TwinPage(parent, "Preload against bearing flanks and error");
        Composite line = Flow.in(page.content(), TwinPage.COLUMNS, GAP, false);
        new Label(line, SWT.NONE).setText("Joint");
        stage = new Combo(line, SWT.READ_ONLY | SWT.DROP_DOWN);
        stage.setToolTipText("The joint whose teeth are tried out; nothing here changes the file.");
        Accessibles.name(stage, "Joint");
        stage.addListener(SWT.Selection, e -> read());
        Button again = new Button(line, SWT.PUSH);
        again.setText("As in the &File");
        again.setToolTipText("Puts all numbers back to what the file says");
        again.addListener(SWT.Selection, e -> read());
        head = page.line();
        head.setFont(new Fonts(head).bold());
        form = new TeethForm(page.content(), this::changed);
        bad = new Notice(page.content(), ISharedImages.IMG_OBJS_ERROR_TSK, TwinPage.COLUMNS);
        more = page.line();
        variants = new VariantTable(page.content(), TwinPage.COLUMNS);
        friction = page.line();
        chance = new ChanceCheck(page, this::joint);
        page.addToggle(page.content(), TwinPage.COLUMNS);
    }

    @Override
    public Control control() {
        return page.control();
    }

    /** What is tried out stays while the stages move; another axis or an edit of it begins anew. */
    @Override
    public void show(Looked shown) {
        boolean same = shown.isSameAs(looked) && looked.spec().equals(shown.spec());
        looked = shown;
        List<String> titles = IntStream.range(0, looked.spec().stages().size())
                .mapToObj(j -> looked.spec().stages().get(j).title(j)).toList();
        if (!titles.equals(List.of(stage.getItems()))) {
            int kept = Math.max(0, stage.getSelectionIndex());
            stage.setItems(titles.toArray(String[]::new));
            stage.select(Math.min(kept, titles.size() - 1));
            same = false;
        }
        Optional<JointTeeth> now = joinedTeeth();
        if (!same) {
            page.chart().say("");
        }
        if (!same || teeth == null || !now.filter(teeth::equals).isPresent()) {
            read();
        }
    }

    private Optional<JointTeeth> joinedTeeth() {
        return JointReader.read(looked.session().positioner(), looked.session().analysis(),
                Math.max(0, stage.getSelectionIndex()));
    }

    /** Puts everything to what the file says. */
    private void read() {
        chance.rest();
        teeth = joinedTeeth().orElse(null);
        if (teeth == null || teeth.scatterM() == 0) {
            nothing(teeth == null ? "The teeth of a ring are not worked out: the file has no radius, so that forces"
                    + " along the travel cannot be told." : "The file says that the teeth of " + teeth.title()
                    + " have no scatter; all of them then bear at once, and there is nothing to work out.");
            return;
        }
        int place = Math.max(0, stage.getSelectionIndex());
        int engaged = Math.max(1,
                looked.spec().stages().get(place).rows().engagedBase(looked.now().index(place)).count());
        Joint file = new Joint(teeth.pair(), teeth.variant(), engaged, teeth.independent(engaged), teeth.scatterM(),
                teeth.friction());
        double solid = file.with(ToothVariant.SOLID).law().preloadN(SLIDER_SHARE);
        mostN = rounded(Math.max(LEAST_SLIDER_N, Math.max(SLIDER_PART * solid, 2 * teeth.preloadN().orElse(0))));
        form.setEnabled(true);
        form.show(teeth, looked.sizes(), engaged, mostN, teeth.preloadN().orElse(rounded(file.law().preloadN(0.5))));
        page.sources(TeethWords.sources(teeth));
        changed();
    }

    /** To two digits, so that the slider goes by round steps. */
    private static double rounded(double newtons) {
        double grain = Math.pow(10, Math.floor(Math.log10(newtons)) - 1);
        return Math.max(1, Math.rint(newtons / grain) * grain);
    }

    private void nothing(String sentence) {
        teeth = null;
        form.setEnabled(false);
        bad.say("");
        variants.clear();
        TwinPage.say(head, sentence);
        Stream.of(more, friction).forEach(l -> TwinPage.say(l, ""));
        page.chart().say("");
        page.sources("");
        page.layout();
    }

    private Optional<ChanceCheck.Case> joint() {
        return teeth == null || !form.problem().isEmpty() ? Optional.empty()
                : Optional.of(new ChanceCheck.Case(form.joint(), form.preloadN(), teeth.neighbours(), looked.sizes()));
    }

    private void changed() {
        chance.rest();
        if (teeth == null) {
            return;
        }
        String problem = form.problem();
        bad.say(problem);
        if (problem.isEmpty()) {
            show(form.joint(), form.preloadN(), new TeethWords(looked.sizes()));
        } else {
            TwinPage.say(head, "Not worked out: one of the numbers is not allowed.");
        }
        page.layout();
        variants.fit();
    }

    private void show(Joint joint, double preloadN, TeethWords words) {
        Joint.Held held = joint.at(preloadN);
        TwinPage.say(head, words.head(preloadN, held));
        TwinPage.say(more, Stream.of(words.more(joint, held), TeethWords.neighbours(joint)).filter(s -> !s.isEmpty())
                .reduce((a, b) -> a + " " + b).orElseThrow());
        TwinPage.say(friction, words.friction(joint, preloadN, held));
        variants.show(joint);
        double endN = Math.max(mostN, preloadN);
        page.chart().show(new BearingPlot(IntStream.rangeClosed(1, POINTS).mapToDouble(i -> endN * i / POINTS)
                .mapToObj(n -> point(joint, n)).toList(), preloadN, looked.sizes().errors()));
    }

    private static BearingPlot.Point point(Joint joint, double preloadN) {
        Joint.Held held = joint.at(preloadN);
        return new BearingPlot.Point(preloadN, held.bearingShare(), TeethWords.WITHIN_95 * held.spreadM());
    }

    @Override
    public void rest() {
        chance.rest();
    }

    @Override
    public void setFocus() {
        form.setFocus();
    }
}
