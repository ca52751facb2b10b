// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.XmlText;
import pitchstack.export.card.SettingCard.Entry;
import pitchstack.export.card.SettingCard.Way;

/** Writes a card as one page of HTML that needs no other file, for a screen at the machine or for printing. */
final class CardHtml {
    private static final String STYLE = """
            body { font-family: sans-serif; max-width: 60em; margin: 1em auto; padding: 0 1em;
                   color: #111; background: #fff }
            section { border-top: 2px solid #111; padding: .3em 0; break-inside: avoid }
            h2 { font-size: 1.2em; margin: .3em 0; display: flex; justify-content: space-between; gap: 1em }
            .counts { display: flex; gap: 2em; flex-wrap: wrap; margin: 0 }
            .counts dd { margin: 0; font-size: 2.4em; font-weight: bold; font-variant-numeric: tabular-nums }
            .counts small { display: block; font-size: .35em }
            table { border-collapse: collapse }
            th, td { border: 1px solid #555; padding: .2em .6em; text-align: right }
            """;

    private final SettingCard card;
    private final StringBuilder html = new StringBuilder();

    private CardHtml(SettingCard card) {
        this.card = card;
    }

    /** The text of the file. */
    static String of(SettingCard card) {
        return new CardHtml(card).page();
    }

    private String page() {
        String title = "Setting card: " + card.head().title();
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.append("<title>").append(XmlText.of(title)).append("</title>\n<style>\n").append(STYLE).append("</style>\n</head>\n<body>\n");
        line("h1", title);
        line("p", CardBlocks.identity(card));
        line("h3", "What the counts hold for");
        items(Stream.concat(Stream.of(CardWords.home(card)), card.holds().stream()).toList());
        line("h3", "Cautions");
        items(card.cautions());
        card.entries().forEach(this::entry);
        card.pocket().forEach(this::pocket);
        return html.append("</body>\n</html>\n").toString();
    }

    private void items(List<String> sentences) {
        html.append("<ul>\n");
        sentences.forEach(sentence -> line("li", sentence));
        html.append("</ul>\n");
    }

    private void entry(Entry entry) {
        html.append("<section>\n<h2><span>").append(XmlText.of(CardWords.title(entry))).append("</span>");
        entry.way().ifPresent(way -> html.append("<span>Scale reads ").append(XmlText.of(CardWords.reads(card, way)))
                .append("</span>"));
        html.append("</h2>\n");
        entry.way().ifPresentOrElse(way -> set(entry, way), () -> line("p", "Left out. " + entry.whyNot()));
        html.append("</section>\n");
    }

    private void set(Entry entry, Way way) {
        Setting setting = way.fromPrevious().setting();
        html.append("<dl class=\"counts\">\n");
        for (int j = 0; j < setting.size(); j++) {
            html.append("<div><dt>").append(XmlText.of(card.stage(j))).append("</dt><dd>")
                    .append(TrueMinus.in(String.valueOf(setting.index(j))))
                    .append(way.fromPrevious().wornStages().contains(j) ? "<small>over worn teeth</small>" : "")
                    .append("</dd></div>\n");
        }
        html.append("</dl>\n");
        line("p", CardWords.error(card, entry, way));
        line("p", "From the entry before: " + CardWords.steps(card, way.fromPrevious()));
        line("p", "From home: " + CardWords.fromHome(card, way));
    }

    private void pocket(PocketTable table) {
        html.append("<section>\n");
        line("h2", table.title());
        html.append("<table>\n");
        row("th", "Teeth", table.columns(), text -> text);
        for (PocketTable.Row row : table.rows()) {
            row("td", String.valueOf(row.count()), row.travel().stream().map(way -> way == null ? ""
                    : card.axis().scale().format(way)).toList(), TrueMinus::in);
        }
        html.append("</table>\n</section>\n");
    }

    private void row(String tag, String first, List<String> cells, UnaryOperator<String> shown) {
        html.append("<tr><th>").append(first).append("</th>");
        cells.forEach(cell -> html.append('<').append(tag).append('>').append(XmlText.of(shown.apply(cell))).append("</")
                .append(tag).append('>'));
        html.append("</tr>\n");
    }

    private void line(String tag, String text) {
        html.append('<').append(tag).append('>').append(XmlText.of(text)).append("</").append(tag).append(">\n");
    }
}
