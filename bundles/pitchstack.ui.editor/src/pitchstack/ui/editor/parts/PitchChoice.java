// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import pitchstack.core.units.Pitch;
import pitchstack.core.units.PitchWay;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;

/** What the number of a pitch counts, chosen beside it; the number itself stays. */
final class PitchChoice implements Beside {
    private final Scale scale;
    private final String text;
    private final List<PitchWay> ways;
    private final Optional<PitchWay.Parts> parts;
    private Combo combo;
    private Runnable changed;

    /** @param text the pitch as it is now */
    PitchChoice(Scale scale, String text) {
        this.scale = scale;
        this.text = text;
        ways = PitchWay.of(scale);
        parts = PitchWay.split(text, scale);
    }

    @Override
    public String begin() {
        return parts.map(PitchWay.Parts::number).orElse(text);
    }

    @Override
    public Control control(Composite box, Runnable told) {
        changed = told;
        combo = new Combo(box, SWT.READ_ONLY);
        ways.forEach(way -> combo.add(way.label()));
        combo.select(ways.indexOf(parts.map(PitchWay.Parts::way).orElse(ways.get(0))));
        combo.setToolTipText("What the number counts; CP is circular pitch, DP diametral pitch (up and down arrow)");
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> changed.run()));
        combo.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = "pitch is given as";
            }
        });
        return combo;
    }

    @Override
    public void turn(int by) {
        combo.select(Math.max(0, Math.min(ways.size() - 1, combo.getSelectionIndex() + by)));
        changed.run();
    }

    /** What was not touched stays as it was typed. */
    @Override
    public String whole(String typed) {
        PitchWay way = ways.get(combo.getSelectionIndex());
        boolean same = typed.strip().equals(begin()) && parts.filter(known -> known.way() != way).isEmpty();
        return same ? text : way.join(typed);
    }

    @Override
    public String meaning(String whole) {
        try {
            long spacing = Pitch.parse(whole).units(scale);
            return spacing > 0 ? whole + ": " + TrueMinus.in(scale.format(spacing)) + " a tooth" : "";
        } catch (QuantityException unreadable) {
            return "";
        }
    }
}
