// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/**
 * Marked teeth of a row as a value: what a worn range of the file says, or what is only supposed.
 *
 * @param row the row, which is part of a stage
 * @param first the first tooth, counted from 0
 * @param last the last tooth
 * @param kind what they are fit for
 * @param note what is wrong with them; may be empty
 */
public record ToothMark(Row row, int first, int last, WearKind kind, String note) {
    /** Takes no note for an empty one. */
    public ToothMark {
        note = note == null ? "" : note.strip();
    }

    /** What a worn range of a document says. */
    public static ToothMark of(WornRange range) {
        return new ToothMark((Row) range.eContainer(), range.getFirst(), range.getLast(), range.getKind(), range.getNote());
    }

    /** What all worn ranges of a row say. */
    public static List<ToothMark> all(Row row) {
        return row.getWorn().stream().map(ToothMark::of).toList();
    }

    /** The worn ranges of an axis, lowest stage first, base row before rider row. */
    public static List<WornRange> ranges(Axis axis) {
        List<WornRange> all = new ArrayList<>();
        for (Stage stage : axis.getStages()) {
            for (Row row : rows(stage)) {
                all.addAll(row.getWorn());
            }
        }
        return all;
    }

    /** The rows of a stage that it has, base row first. */
    public static List<Row> rows(Stage stage) {
        List<Row> rows = new ArrayList<>();
        if (stage.getBaseRow() != null) {
            rows.add(stage.getBaseRow());
        }
        if (stage.getRiderRow() != null) {
            rows.add(stage.getRiderRow());
        }
        return rows;
    }

    /** Whether a row is a base row, not a rider row. */
    public static boolean isBase(Row row) {
        return row.eContainmentFeature() == Literals.STAGE__BASE_ROW;
    }

    /** A row in words: {@code base row of “Rack”}. */
    public static String words(Row row) {
        return (isBase(row) ? "base row of “" : "rider row of “") + ((Stage) row.eContainer()).getName() + "”";
    }

    /** The teeth in words: {@code tooth 7} or {@code teeth 7 to 9}. */
    public static String words(int first, int last) {
        return first == last ? "tooth " + first : "teeth " + first + " to " + last;
    }

    /** The teeth in words. */
    public String teeth() {
        return words(first, last);
    }

    /** The stage of the row. */
    public Stage stage() {
        return (Stage) row.eContainer();
    }

    /** The teeth. */
    public ToothSpan span() {
        return new ToothSpan(first, last);
    }

    /** The same in numbers, for the axis that the row is on. */
    public WearMark inNumbers() {
        Stage stage = stage();
        return new WearMark(((Axis) stage.eContainer()).getStages().indexOf(stage),
                isBase(row) ? WearMark.Row.BASE : WearMark.Row.RIDER,
                new pitchstack.core.stack.WornRange(span(), kind == WearKind.BARRED ? Wear.BARRED : Wear.WORN));
    }

    /** The same teeth numbers on another row. */
    public ToothMark on(Row other) {
        return new ToothMark(other, first, last, kind, note);
    }

    /** Other teeth of the row. */
    public ToothMark from(int firstTooth, int lastTooth) {
        return new ToothMark(row, firstTooth, lastTooth, kind, note);
    }

    /** Fit for something else. */
    public ToothMark as(WearKind other) {
        return new ToothMark(row, first, last, other, note);
    }

    /** With another note. */
    public ToothMark noted(String other) {
        return new ToothMark(row, first, last, kind, other);
    }

    /** A new worn range that says this, part of no row yet. */
    WornRange range() {
        WornRange range = PitchstackFactory.eINSTANCE.createWornRange();
        write(range);
        return range;
    }

    /** Lets a worn range say this; its row stays. */
    void write(WornRange range) {
        range.setFirst(first);
        range.setLast(last);
        range.setKind(kind);
        range.setNote(note.isEmpty() ? null : note);
    }
}
