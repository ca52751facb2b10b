// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.StageSpec;

/**
 * What counts are worth: how far the carriage goes when one stage goes forward so many teeth, or when a stage goes forward
 * and the next one back by the same count.
 *
 * @param title what the table is about
 * @param columns what each column says, the count first left out
 * @param rows one for each count
 */
public record PocketTable(String title, List<String> columns, List<Row> rows) {
    /** Each tooth up to ten, which people count, then what is quicker to add up. */
    private static final int[] COUNTS = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 15, 20, 25, 50, 100};

    /**
     * One count.
     *
     * @param count in teeth
     * @param travel of the carriage for each column, a count of the scale; null where a stage does not have so many teeth
     */
    public record Row(int count, List<Long> travel) { }

    /** The tables of an axis, with the pitches of the day; errors of single indices are left out. */
    public static List<PocketTable> of(AxisSpec axis) {
        List<Column> single = new ArrayList<>();
        List<Column> pairs = new ArrayList<>();
        List<StageSpec> stages = axis.stages();
        for (int j = 0; j < stages.size(); j++) {
            single.add(new Column(name(axis, j), stages.get(j).pitch(), most(stages.get(j))));
            if (j > 0) {
                pairs.add(new Column(name(axis, j - 1) + " forward, " + name(axis, j) + " back",
                        stages.get(j - 1).pitch() - stages.get(j).pitch(),
                        Math.min(most(stages.get(j - 1)), most(stages.get(j)))));
            }
        }
        PocketTable one = of("Pocket table: one stage forward", single);
        return pairs.isEmpty() ? List.of(one)
                : List.of(one, of("Pocket table: one stage forward and the next back by the same count", pairs));
    }

    private record Column(String title, long perTooth, int most) { }

    private static PocketTable of(String title, List<Column> columns) {
        List<Row> rows = new ArrayList<>();
        for (int count : COUNTS) {
            List<Long> travel = new ArrayList<>();
            columns.forEach(column -> travel.add(count <= column.most ? count * column.perTooth : null));
            if (travel.stream().anyMatch(way -> way != null)) {
                rows.add(new Row(count, travel));
            }
        }
        return new PocketTable(title, columns.stream().map(Column::title).toList(), rows);
    }

    private static String name(AxisSpec axis, int stage) {
        String name = axis.stages().get(stage).name();
        return name.isBlank() ? "Stage " + (stage + 1) : name;
    }

    /** From one end of a stage's range to the other. */
    private static int most(StageSpec stage) {
        return stage.rows().indices().count() - 1;
    }
}
