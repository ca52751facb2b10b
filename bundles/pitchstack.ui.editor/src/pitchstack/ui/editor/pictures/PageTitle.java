// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.pictures;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import org.eclipse.draw2d.FigureUtilities;
import org.eclipse.draw2d.Graphics;
import pitchstack.edit.Session;
import pitchstack.ui.editor.figures.Look;
import pitchstack.ui.editor.parts.CarriageWords;

/**
 * The lines above a printed drawing.
 *
 * @param file the name of the file
 * @param stands what is drawn, and where its carriage stands
 * @param day when it was printed
 */
record PageTitle(String file, String stands, LocalDate day) {
    private static final int GAP = 12;

    /** Of a document, printed today. */
    static PageTitle of(String file, Session session) {
        return new PageTitle(file, "Axis " + session.axis().getName() + ", carriage at "
                + CarriageWords.position(session.analysis(), session.shown()), LocalDate.now());
    }

    /** Pixels it takes. */
    int height(Look look) {
        return FigureUtilities.getFontMetrics(look.large()).getHeight()
                + FigureUtilities.getFontMetrics(look.plain()).getHeight() + GAP;
    }

    /** Paints it at the top left, the day at the right. */
    void paint(Graphics graphics, Look look, int width) {
        graphics.setForegroundColor(look.ink());
        graphics.setFont(look.large());
        graphics.drawString(file, 0, 0);
        int second = FigureUtilities.getFontMetrics(look.large()).getHeight();
        graphics.setFont(look.plain());
        graphics.drawString(stands, 0, second);
        String date = "Printed " + DateTimeFormatter.ofLocalizedDate(FormatStyle.LONG).format(day);
        graphics.drawString(date, width - FigureUtilities.getTextExtents(date, look.plain()).width, second);
    }
}
