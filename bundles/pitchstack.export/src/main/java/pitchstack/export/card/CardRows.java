// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.export.card.SettingCard.Entry;
import pitchstack.export.card.SettingCard.Way;

/**
 * A card as rows of a spreadsheet, one for each target: numbers in millimetres or degrees whatever the unit of the file, and
 * for each stage its count, how far it goes from the entry before, and how far from home.
 */
final class CardRows {
    private final SettingCard card;

    private CardRows(SettingCard card) {
        this.card = card;
    }

    /** The rows, the header first; what is a number is written with a decimal point. */
    static List<List<String>> targets(SettingCard card) {
        CardRows rows = new CardRows(card);
        List<List<String>> all = new ArrayList<>(List.of(rows.header()));
        card.entries().forEach(entry -> all.add(rows.row(entry)));
        return all;
    }

    /** A pocket table, the header first. */
    static List<List<String>> pocket(SettingCard card, PocketTable table) {
        List<List<String>> all = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of("teeth"));
        table.columns().forEach(column -> header.add(column + unit(card.axis())));
        all.add(header);
        for (PocketTable.Row row : table.rows()) {
            List<String> cells = new ArrayList<>(List.of(String.valueOf(row.count())));
            row.travel().forEach(way -> cells.add(way == null ? "" : card.axis().scale().decimal(way)));
            all.add(cells);
        }
        return all;
    }

    /** What else stands on the card, one thing a row. */
    static List<List<String>> about(SettingCard card) {
        List<List<String>> all = new ArrayList<>();
        all.add(List.of("Setting card: " + card.head().title()));
        all.add(List.of(CardBlocks.identity(card)));
        all.add(List.of(CardWords.home(card)));
        card.holds().forEach(sentence -> all.add(List.of(sentence)));
        card.cautions().forEach(sentence -> all.add(List.of(sentence)));
        return all;
    }

    private static String unit(AxisSpec axis) {
        return axis.scale().turn() == 0 ? " (mm)" : " (deg)";
    }

    private List<String> header() {
        String unit = unit(card.axis());
        List<String> header = new ArrayList<>(List.of("entry", "name", "target" + unit, "tolerance" + unit,
                "scale reads" + unit, "error" + unit));
        card.stages().forEach(stage -> header.add(stage + " count"));
        card.stages().forEach(stage -> header.add(stage + " from the entry before"));
        card.stages().forEach(stage -> header.add(stage + " from home"));
        header.addAll(List.of("worn", "why left out"));
        return header;
    }

    private List<String> row(Entry entry) {
        List<String> row = new ArrayList<>(List.of(String.valueOf(entry.number()), entry.name(), decimal(entry.target()),
                decimal(entry.tolerance())));
        if (entry.way().isPresent()) {
            add(row, entry.way().get());
        } else {
            row.addAll(Collections.nCopies(3 + 3 * card.axis().stages().size(), ""));
        }
        row.add(entry.whyNot());
        return row;
    }

    private void add(List<String> row, Way way) {
        PlannedSetting move = way.fromPrevious();
        int stages = card.axis().stages().size();
        row.addAll(List.of(decimal(move.position()), decimal(move.error())));
        for (int j = 0; j < stages; j++) {
            row.add(String.valueOf(move.setting().index(j)));
        }
        for (int j = 0; j < stages; j++) {
            row.add(String.valueOf(moved(move, j)));
        }
        for (int j = 0; j < stages; j++) {
            row.add(String.valueOf(move.setting().index(j) - card.home().index(j)));
        }
        row.add(move.wornStages().stream().map(card::stage).collect(Collectors.joining("; ")));
    }

    private static int moved(PlannedSetting move, int stage) {
        return move.steps().stream().filter(step -> step.stage() == stage).mapToInt(step -> step.teeth()).sum();
    }

    private String decimal(long count) {
        return card.axis().scale().decimal(count);
    }
}
