// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor;

import org.eclipse.jface.viewers.DelegatingStyledCellLabelProvider.IStyledLabelProvider;
import org.eclipse.jface.viewers.LabelProvider;
import org.eclipse.jface.viewers.StyledString;
import org.eclipse.jface.viewers.StyledString.Styler;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.TextStyle;
import org.eclipse.swt.widgets.Display;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.Target;
import pitchstack.model.WornRange;
import pitchstack.ui.editor.figures.Palette;
import pitchstack.ui.editor.parts.CarriageWords;
import pitchstack.ui.editor.parts.MarkWords;
import pitchstack.ui.editor.parts.StageWords;

/** Names, and behind them the numbers that tell most. */
final class OutlineLabels extends LabelProvider implements IStyledLabelProvider {
    private static final Styler SOFT = new Styler() {
        @Override
        public void applyStyles(TextStyle style) {
            style.foreground = Palette.of(Display.getCurrent()).softInk();
        }
    };

    private final Session session;

    OutlineLabels(Session session) {
        this.session = session;
    }

    @Override
    public StyledString getStyledText(Object element) {
        if (element instanceof Positioner positioner) {
            return words(positioner.getTitle(), "");
        }
        if (element instanceof Axis axis) {
            AxisAnalysis analysis = session.analysis(axis);
            return words(axis.getName(), CarriageWords.position(analysis, analysis.current()));
        }
        if (element instanceof Stage stage) {
            return words(stage.getName(), StageWords.pitch(stage) + ", index " + StageWords.signed(stage.getIndex()));
        }
        if (element instanceof Row row) {
            boolean base = row.eContainmentFeature() == Literals.STAGE__BASE_ROW;
            return words(base ? "base row" : "rider row", row.getTeeth() + " teeth");
        }
        if (element instanceof WornRange range) {
            return words(MarkWords.of(range), text(range.getNote()));
        }
        return element instanceof Target target ? words("◇ " + text(target.getName()), text(target.getPosition()))
                : words(String.valueOf(element), "");
    }

    private static StyledString words(String name, String numbers) {
        StyledString text = new StyledString(text(name).isBlank() ? "without a name" : name);
        return numbers.isBlank() ? text : text.append("  " + numbers, SOFT);
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }

    @Override
    public Image getImage(Object element) {
        return null;
    }

    @Override
    public String getText(Object element) {
        return getStyledText(element).getString();
    }
}
