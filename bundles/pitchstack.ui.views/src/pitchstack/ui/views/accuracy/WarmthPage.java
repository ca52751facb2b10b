// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.ISharedImages;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.Notice;
import pitchstack.ui.views.targets.Fonts;

/** What warmth does to the position: today, and from one season to another. */
final class WarmthPage implements AccuracyPage {
    private static final int FIELD_LETTERS = 8;
    private static final int GAP = 5;
    private static final double COLDEST = -40;
    private static final double HOTTEST = 80;

    private final TwinPage page;
    private final Text cold;
    private final Text hot;
    private final Notice bad;
    private final Label today;
    private final Label aim;
    private final Label season;
    private final Label moisture;
    private Looked looked;

    WarmthPage(Composite parent) {
        page = new TwinPage(parent, "Growth with warmth");
        today = page.line();
        today.setFont(new Fonts(today).bold());
        aim = page.line();
        Composite line = Flow.in(page.content(), TwinPage.COLUMNS, GAP, false);
        cold = field(line, "From", "15");
        hot = field(line, "°C to", "28");
        new Label(line, SWT.NONE).setText("°C");
        bad = new Notice(page.content(), ISharedImages.IMG_OBJS_ERROR_TSK, TwinPage.COLUMNS);
        season = page.line();
        moisture = page.line();
        page.addToggle(page.content(), TwinPage.COLUMNS);
    }

    private Text field(Composite parent, String name, String text) {
        new Label(parent, SWT.NONE).setText(name);
        Text field = new Text(parent, SWT.SINGLE | SWT.BORDER);
        field.setText(text);
        String tip = name.equals("From") ? "The coldest the shop gets, in degrees Celsius"
                : "The warmest the shop gets, in degrees Celsius";
        field.setToolTipText(tip);
        Accessibles.name(field, tip);
        field.setLayoutData(Flow.Room.of(FIELD_LETTERS, field));
        field.addListener(SWT.Modify, e -> changed());
        return field;
    }

    @Override
    public Control control() {
        return page.control();
    }

    @Override
    public void show(Looked shown) {
        looked = shown;
        changed();
    }

    private void changed() {
        if (looked == null) {
            return;
        }
        WarmthWords words = new WarmthWords(looked);
        TwinPage.say(today, words.today());
        TwinPage.say(aim, words.aim());
        String problem = problem(cold) + problem(hot);
        bad.say(problem);
        TwinPage.say(season, problem.isEmpty() ? words.season(value(cold), value(hot)) : "");
        TwinPage.say(moisture, words.moisture());
        words.plot(value(cold), value(hot)).filter(p -> problem.isEmpty()).ifPresentOrElse(page.chart()::show,
                () -> page.chart().say(""));
        page.sources(words.sources());
        page.layout();
    }

    private static String problem(Text field) {
        double value = value(field);
        return value >= COLDEST && value <= HOTTEST ? "" : "“" + field.getText().strip() + "” is not allowed; give a"
                + " temperature from "
                + Math.round(COLDEST) + " to " + Math.round(HOTTEST) + " °C. ";
    }

    private static double value(Text field) {
        try {
            return Double.parseDouble(field.getText().strip().replace(',', '.').replace('−', '-'));
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    @Override
    public void rest() {
        // Nothing here takes long.
    }

    @Override
    public void setFocus() {
        cold.setFocus();
    }
}
