// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.card.SettingCard.Entry;
import pitchstack.export.card.SettingCard.Way;
import pitchstack.export.drawing.Anchor;
import pitchstack.export.drawing.Part;
import pitchstack.export.drawing.Pen;
import pitchstack.export.drawing.Pencil;
import pitchstack.export.drawing.TextLines;
import pitchstack.export.drawing.TextMeasure;

/** The blocks of a card, each as wide as the sheet allows; y counts up from the top of a block at 0. */
final class CardBlocks {
    private static final double TITLE = 5;
    private static final double NAME = 3.5;
    /** Read at arm's length, 0.7 m: 30 minutes of arc, half as much again as signs are made (common practice, no source). */
    private static final double COUNT = 7;
    /** Room for what letters of that height have below their base line. */
    private static final double BELOW_COUNT = 2.4;
    private static final double PAD = 2;
    /** Between columns of counts. */
    private static final double COLUMN_GAP = 3;

    private final SettingCard card;
    private final TextMeasure measure;
    private final double width;

    CardBlocks(SettingCard card, TextMeasure measure, double width) {
        this.card = card;
        this.measure = measure;
        this.width = width;
    }

    /** Title, axis, number, revision and date in one line. */
    static String identity(SettingCard card) {
        SettingCard.Head head = card.head();
        return Stream.of(head.title(), card.axis().name().isBlank() ? "" : "axis " + card.axis().name(), head.number(),
                head.revision().isBlank() ? "" : "revision " + head.revision(), head.date().toString(), head.owner())
                .filter(text -> !text.isBlank()).collect(Collectors.joining(" · "));
    }

    Part head() {
        Pencil pencil = new Pencil(measure);
        double y = lines(pencil, "Setting card: " + card.head().title(), -TITLE, TITLE);
        y = lines(pencil, identity(card), y, Pencil.TEXT);
        pencil.line(Pen.OUTLINE, 0, y, width, y);
        return pencil.part("head");
    }

    Part sentences(String name, String heading, List<String> sentences) {
        Pencil pencil = new Pencil(measure);
        double y = lines(pencil, heading, -NAME, NAME);
        for (String sentence : sentences) {
            y = lines(pencil, sentence, y, Pencil.TEXT);
        }
        return pencil.part(name);
    }

    /** A target: its name and what the scale reads, the counts in large type, then the steps. */
    Part entry(Entry entry) {
        Pencil pencil = new Pencil(measure);
        pencil.line(Pen.OUTLINE, 0, 0, width, 0);
        if (entry.way().isPresent()) {
            set(pencil, entry, entry.way().get());
        } else {
            leftOut(pencil, entry);
        }
        return pencil.part("entry-" + entry.number());
    }

    private void leftOut(Pencil pencil, Entry entry) {
        double y = lines(pencil, CardWords.title(entry), -PAD - NAME, NAME);
        lines(pencil, "Left out. " + entry.whyNot(), y, Pencil.TEXT);
    }

    private void set(Pencil pencil, Entry entry, Way way) {
        String reads = "Scale reads " + CardWords.reads(card, way);
        double base = -PAD - NAME;
        pencil.text(reads, width, base, NAME, Anchor.END);
        double room = width - measure.widthMm(reads, NAME) - COLUMN_GAP;
        pencil.text(TextLines.cut(CardWords.title(entry), NAME, room, measure), 0, base, NAME, Anchor.START);
        double y = counts(pencil, way, base - PAD);
        y = lines(pencil, CardWords.error(card, entry, way), y, Pencil.TEXT);
        y = lines(pencil, "From the entry before: " + CardWords.steps(card, way.fromPrevious()), y, Pencil.TEXT);
        lines(pencil, "From home: " + CardWords.fromHome(card, way), y, Pencil.TEXT);
    }

    /** One column a stage; a column narrower than its count makes the count smaller, never the card wider. */
    private double counts(Pencil pencil, Way way, double top) {
        Setting setting = way.fromPrevious().setting();
        double column = width / setting.size();
        double nameBase = top - Pencil.TEXT;
        double countBase = nameBase - PAD - COUNT;
        boolean worn = false;
        for (int j = 0; j < setting.size(); j++) {
            String count = TrueMinus.in(String.valueOf(setting.index(j)));
            double room = column - COLUMN_GAP;
            pencil.text(TextLines.cut(card.stage(j), Pencil.TEXT, room, measure), j * column, nameBase, Pencil.TEXT,
                    Anchor.START);
            double height = Math.min(COUNT, COUNT * room / measure.widthMm(count, COUNT));
            pencil.text(count, j * column, countBase, height, Anchor.START);
            if (way.fromPrevious().wornStages().contains(j)) {
                pencil.text("over worn teeth", j * column, countBase - BELOW_COUNT - Pencil.TEXT, Pencil.TEXT,
                        Anchor.START);
                worn = true;
            }
        }
        return countBase - (worn ? BELOW_COUNT + Pencil.TEXT : 0) - PAD - Pencil.TEXT * Pencil.LINE_PITCH;
    }

    /** Writes a text in as many lines as it needs; the result is the base line of what comes next. */
    private double lines(Pencil pencil, String text, double base, double height) {
        double y = base;
        for (String line : TextLines.wrapped(text, height, width, measure)) {
            pencil.text(line, 0, y, height, Anchor.START);
            y -= height * Pencil.LINE_PITCH;
        }
        return y;
    }
}
