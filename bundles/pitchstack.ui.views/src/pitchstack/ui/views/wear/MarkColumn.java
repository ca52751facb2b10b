// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.List;
import java.util.Optional;
import pitchstack.edit.Session;
import pitchstack.edit.ToothMark;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;

/** The columns of the table: what each shows, and what typing in it comes to. */
enum MarkColumn {
    /** The stage of the row. */
    STAGE("Stage"),
    /** Which of its rows. */
    ROW("Row"),
    /** The first tooth. */
    FIRST("First\t"),
    /** The last tooth. */
    LAST("Last\t"),
    /** What the teeth are fit for, and whether that is only supposed. */
    WEAR("Wear"),
    /** What is wrong with them. */
    NOTE("Note");

    private static final int LONGEST_NOTE = 2000;

    private final String title;

    MarkColumn(String title) {
        this.title = title;
    }

    static String[] titles() {
        return List.of(values()).stream().map(column -> column.title).toArray(String[]::new);
    }

    String text(MarkItem item) {
        ToothMark mark = item.mark();
        return switch (this) {
            case STAGE -> name(mark.stage());
            case ROW -> row(mark.row());
            case FIRST -> String.valueOf(mark.first());
            case LAST -> String.valueOf(mark.last());
            case WEAR -> mark.kind().getLiteral() + (item.isSupposed() ? " (supposed)" : "");
            case NOTE -> mark.note();
        };
    }

    /** What can be chosen; empty where text is typed, or nothing can be changed. */
    List<String> choices(Session session) {
        return switch (this) {
            case STAGE -> session.axis().getStages().stream().map(MarkColumn::name).toList();
            case ROW -> List.of("base row", "rider row");
            case WEAR -> WearKind.VALUES.stream().map(WearKind::getLiteral).toList();
            default -> List.of();
        };
    }

    /** Which of the choices a line has. */
    int chosen(Session session, MarkItem item) {
        return switch (this) {
            case STAGE -> session.axis().getStages().indexOf(item.mark().stage());
            case ROW -> ToothMark.isBase(item.mark().row()) ? 0 : 1;
            default -> WearKind.VALUES.indexOf(item.mark().kind());
        };
    }

    /** The mark with another choice, counted from 0. */
    ToothMark choose(Session session, MarkItem item, int choice) {
        ToothMark mark = item.mark();
        return switch (this) {
            case STAGE -> on(mark, session.axis().getStages().get(choice), ToothMark.isBase(mark.row()));
            case ROW -> on(mark, mark.stage(), choice == 0);
            default -> mark.as(WearKind.VALUES.get(choice));
        };
    }

    private static ToothMark on(ToothMark mark, Stage stage, boolean base) {
        Row row = base ? stage.getBaseRow() : stage.getRiderRow();
        return row == null ? mark : mark.on(row);
    }

    /** What typed text comes to: the mark, or the reason why there is none. */
    record Typed(Optional<ToothMark> mark, String refusal) { }

    Typed type(MarkItem item, String text) {
        if (this == NOTE) {
            return text.length() > LONGEST_NOTE ? new Typed(Optional.empty(), "The note has " + text.length()
                    + " characters; " + LONGEST_NOTE + " are allowed.")
                    : new Typed(Optional.of(item.mark().noted(text)), "");
        }
        ToothMark mark = item.mark();
        try {
            int tooth = Integer.parseInt(text.strip());
            // Where one end is typed past the other, the other goes along.
            return new Typed(Optional.of(this == FIRST ? mark.from(tooth, Math.max(tooth, mark.last()))
                    : mark.from(Math.min(tooth, mark.first()), tooth)), "");
        } catch (NumberFormatException e) {
            return new Typed(Optional.empty(), "“" + text.strip() + "” is no tooth; give a whole number from 0 to "
                    + Math.max(0, mark.row().getTeeth() - 1) + ".");
        }
    }

    boolean isTyped() {
        return this == FIRST || this == LAST || this == NOTE;
    }


    private static String name(Stage stage) {
        return stage.getName() == null || stage.getName().isBlank() ? "without a name" : stage.getName();
    }

    private static String row(Row row) {
        return ToothMark.isBase(row) ? "base row" : "rider row";
    }
}
