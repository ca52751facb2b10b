// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import pitchstack.export.drawing.Anchor;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.Part;
import pitchstack.export.drawing.Pencil;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.TextLines;
import pitchstack.export.drawing.TextMeasure;

/**
 * Lays a card out on sheets of A4: head, what the counts hold for and cautions on the first, then one block for each target
 * that is never torn apart, then the pocket table.
 */
public final class CardSheets {
    private static final SheetSize SHEET = SheetSize.A4;
    private static final double FOOT = 6;
    private static final double GAP = 3;

    private final SettingCard card;
    private final TextMeasure measure;
    private final double left = SHEET.drawingSpace().left();
    private final double width = SHEET.drawingSpace().width();
    private final List<List<Part>> sheets = new ArrayList<>();
    private double y;

    private CardSheets(SettingCard card, TextMeasure measure) {
        this.card = card;
        this.measure = measure;
    }

    /** The sheets, in order; at least one. */
    public static List<Drawing> of(SettingCard card, TextMeasure measure) {
        return new CardSheets(card, measure).sheets();
    }

    private List<Drawing> sheets() {
        turnOver();
        CardBlocks blocks = new CardBlocks(card, measure, width);
        add(blocks.head());
        add(blocks.sentences("holds", "What the counts hold for", Stream.concat(Stream.of(CardWords.home(card)),
                card.holds().stream()).toList()));
        add(blocks.sentences("cautions", "Cautions", card.cautions()));
        card.entries().forEach(entry -> add(blocks.entry(entry)));
        for (int i = 0; i < card.pocket().size(); i++) {
            add(PocketPart.of("pocket-" + (i + 1), card.pocket().get(i), card.axis().scale(), measure, width));
        }
        return numbered();
    }

    private void add(Part part) {
        if (y - part.box().height() < SHEET.drawingSpace().bottom() + FOOT && !sheets.get(sheets.size() - 1).isEmpty()) {
            turnOver();
        }
        y -= part.box().height();
        sheets.get(sheets.size() - 1).add(part.at(left, y));
        y -= GAP;
    }

    private void turnOver() {
        sheets.add(new ArrayList<>());
        y = SHEET.drawingSpace().top();
    }

    private List<Drawing> numbered() {
        List<Drawing> numbered = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            List<Part> parts = new ArrayList<>(sheets.get(i));
            parts.add(foot(i + 1));
            numbered.add(new Drawing(SHEET, card.head().title() + ", setting card", card.head().owner(), card.head().date(),
                    parts));
        }
        return numbered;
    }

    private Part foot(int number) {
        Pencil pencil = new Pencil(measure);
        String end = "Sheet " + number + " of " + sheets.size();
        double room = width - measure.widthMm(end, Pencil.TEXT) - GAP;
        pencil.text(TextLines.cut(CardBlocks.identity(card), Pencil.TEXT, room, measure), 0, 0, Pencil.TEXT, Anchor.START);
        pencil.text(end, width, 0, Pencil.TEXT, Anchor.END);
        return pencil.part("foot").at(left, SHEET.drawingSpace().bottom());
    }
}
