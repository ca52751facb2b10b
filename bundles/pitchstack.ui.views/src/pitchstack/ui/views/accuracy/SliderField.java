// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Text;
import pitchstack.ui.views.Accessibles;

/** A number with a slider and a field to type it in; a name before them and a unit behind. Takes four columns. */
final class SliderField {
    private static final int FIELD_WIDTH = 52;
    private static final int SLIDER_WIDTH = 90;
    private static final int PAGES = 10;

    private final String name;
    private final Scale slider;
    private final Text text;
    private final Label unit;
    private final Runnable changed;
    private Range range = new Range(0, 1, 1, 0);
    private boolean showing;

    /**
     * What numbers there are.
     *
     * @param least the smallest
     * @param most the largest, above it
     * @param step of the slider, above 0
     * @param decimals that are shown
     */
    record Range(double least, double most, double step, int decimals) {
        int steps() {
            return (int) Math.max(1, Math.round((most - least) / step));
        }

        String text(double value) {
            return new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN).toPlainString();
        }

        double inside(double value) {
            return Math.max(least, Math.min(most, value));
        }
    }

    /** @param changed called after each change that a person makes */
    SliderField(Composite parent, String name, String tooltip, Runnable changed) {
        this.name = name;
        this.changed = changed;
        new Label(parent, SWT.NONE).setText(name);
        slider = new Scale(parent, SWT.HORIZONTAL);
        slider.setToolTipText(tooltip);
        Accessibles.name(slider, name + ", slider");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).hint(SLIDER_WIDTH, SWT.DEFAULT)
                .applyTo(slider);
        text = new Text(parent, SWT.SINGLE | SWT.BORDER | SWT.RIGHT);
        text.setToolTipText(tooltip);
        Accessibles.name(text, name);
        GridDataFactory.swtDefaults().hint(FIELD_WIDTH, SWT.DEFAULT).applyTo(text);
        unit = new Label(parent, SWT.NONE);
        slider.addListener(SWT.Selection, e -> slid());
        text.addListener(SWT.Modify, e -> typed());
    }

    /** Shows a number of a range, without telling. */
    void show(Range shown, double value, String unitShown) {
        showing = true;
        range = shown;
        unit.setText(unitShown);
        slider.setMinimum(0);
        slider.setMaximum(range.steps());
        slider.setPageIncrement(Math.max(1, range.steps() / PAGES));
        text.setText(range.text(value));
        slider.setSelection(position(value));
        showing = false;
    }

    private int position(double value) {
        return (int) Math.round((range.inside(value) - range.least()) / range.step());
    }

    private void slid() {
        if (!showing) {
            showing = true;
            text.setText(range.text(range.inside(range.least() + slider.getSelection() * range.step())));
            showing = false;
            changed.run();
        }
    }

    private void typed() {
        if (!showing) {
            showing = true;
            if (problem().isEmpty()) {
                slider.setSelection(position(value()));
            }
            showing = false;
            changed.run();
        }
    }

    /** What is wrong with what is typed, in a sentence; empty where nothing is. */
    String problem() {
        double value = parsed();
        if (value >= range.least() && value <= range.most() && (range.decimals() > 0 || value == Math.rint(value))) {
            return "";
        }
        return name + ": “" + text.getText().strip() + "” is not allowed; give a " + (range.decimals() > 0 ? ""
                : "whole ")
                + "number from " + range.text(range.least()) + " to " + range.text(range.most())
                + (unit.getText().isEmpty() ? "." : " " + unit.getText() + ".");
    }

    private double parsed() {
        try {
            return Double.parseDouble(text.getText().strip().replace(',', '.'));
        } catch (NumberFormatException e) {
            return Double.NaN;
        }
    }

    /** The number; asked for only where nothing is wrong with it. */
    double value() {
        return parsed();
    }

    void setEnabled(boolean enabled) {
        slider.setEnabled(enabled);
        text.setEnabled(enabled);
    }

    void setFocus() {
        slider.setFocus();
    }
}
