// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.figures;

import org.eclipse.draw2d.ColorConstants;
import org.eclipse.draw2d.Label;
import org.eclipse.draw2d.LineBorder;
import org.eclipse.draw2d.MarginBorder;
import org.eclipse.draw2d.CompoundBorder;
import org.eclipse.draw2d.PositionConstants;

/** A few lines of words beside the pointer. */
public final class TipFigure extends Label {
    private static final int PAD = 5;

    /** An empty tip in the system's tooltip colours. */
    public TipFigure() {
        setOpaque(true);
        setBackgroundColor(ColorConstants.tooltipBackground);
        setForegroundColor(ColorConstants.tooltipForeground);
        setLabelAlignment(PositionConstants.LEFT);
        setBorder(new CompoundBorder(new LineBorder(ColorConstants.tooltipForeground, 1), new MarginBorder(PAD)));
    }
}
