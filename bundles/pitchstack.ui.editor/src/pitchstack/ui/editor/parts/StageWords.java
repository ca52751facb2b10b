// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import pitchstack.core.check.CurrentBeyondTravel;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;
import pitchstack.core.units.PitchWay;
import pitchstack.core.units.TrueMinus;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Stage;
import pitchstack.ui.editor.figures.LabelFigure;

/**
 * A stage in words, at one index.
 *
 * @param stage the stage
 * @param rows its rows in numbers
 * @param index the index to speak of
 */
public record StageWords(Stage stage, RowPair rows, int index) {
    /** A signed number with a real minus, as it is read beside a drawing. */
    public static String signed(int number) {
        return number > 0 ? "+" + number : number < 0 ? "−" + Math.abs((long) number) : "0";
    }

    /** The label at the left. */
    LabelFigure.Words label(Found found) {
        return new LabelFigure.Words(name(), pitch() + " · " + stage.getSource().getLiteral(),
                "index " + signed(index), range() + ", " + engaged(), wear(), found.badge());
    }

    /**
     * All of it, for a tooltip.
     *
     * @param more what follows
     */
    public String tip(String more) {
        List<String> lines = new ArrayList<>(List.of(name(), "Pitch " + pitch() + ", " + stage.getSource().getLiteral(),
                "Index " + signed(index) + ", range " + range(), rows.engagedBase(index).count() + " teeth engaged, at least "
                        + Math.max(1, rows.minimumEngaged()) + " wanted"));
        if (!wear().isEmpty()) {
            lines.add(wear());
        }
        return String.join("\n", lines) + more;
    }

    /** One sentence, for a screen reader and the status line. */
    public String sentence() {
        return name() + ", index " + signed(index) + ", range " + range() + ", " + rows.engagedBase(index).count()
                + " teeth engaged" + (wear().isEmpty() ? "" : ", " + wear());
    }

    /**
     * Why the stage would not stand at an index that was pointed at.
     *
     * @param pointed the index pointed at
     * @return a sentence, or nothing if it can stand there
     */
    public String obstacle(int pointed) {
        IndexRange range = rows.indices();
        if (range.isEmpty()) {
            return "It cannot move: its rows never meet with enough teeth.";
        }
        if (!range.contains(pointed)) {
            return "Index " + signed(range.clamp(pointed)) + " is the last: " + Math.max(1, rows.minimumEngaged())
                    + " teeth must stay engaged.";
        }
        return barred(rows.base(), rows.engagedBase(pointed)) || barred(rows.rider(), rows.engagedRider(pointed))
                ? "Index " + signed(pointed) + " is barred: " + marks(pointed, Wear.BARRED) + "." : "";
    }

    /**
     * How far a setting puts the carriage beyond a stop.
     *
     * @return a phrase with the distance and the stop, or nothing where it stands between the stops
     */
    public static String beyond(AxisSpec axis, Setting setting) {
        return CurrentBeyondTravel.overrun(axis, setting).map(overrun -> TrueMinus.in(axis.scale().formatSize(overrun.by())
                + " beyond the stop at " + axis.scale().format(axis.scale().wrap(overrun.stop())))).orElse("");
    }

    /** What people call it. */
    public String name() {
        return stage.getName() == null || stage.getName().isBlank() ? "stage without a name" : stage.getName();
    }

    private String pitch() {
        return stage.getPitch() == null ? "no pitch" : pitch(stage);
    }

    /** The pitch of a stage as typed, with the unit that a number alone counts; empty where there is none. */
    public static String pitch(Stage stage) {
        String typed = stage.getPitch() == null ? "" : stage.getPitch();
        return Session.of(stage).map(session -> session.analysis((Axis) stage.eContainer()).spec().scale())
                .flatMap(scale -> PitchWay.split(typed, scale)).map(parts -> parts.way().join(parts.number())).orElse(typed);
    }

    /** The index range. */
    String range() {
        IndexRange range = rows.indices();
        return range.isEmpty() ? "rows never meet" : signed(range.first()) + " to " + signed(range.last());
    }

    /** How many teeth are engaged. */
    String engaged() {
        return rows.engagedBase(index).count() + " engaged";
    }

    private String wear() {
        Wear wear = rows.wearAt(index);
        return wear == Wear.CLEAN ? "" : marks(index, wear);
    }

    /** The marked teeth that are engaged: {@code base teeth 30 to 33 barred}. */
    private String marks(int at, Wear wear) {
        List<String> words = new ArrayList<>();
        marks("base", rows.base(), rows.engagedBase(at), wear, words);
        marks("rider", rows.rider(), rows.engagedRider(at), wear, words);
        return String.join(", ", words);
    }

    private static void marks(String which, RowSpec row, ToothSpan engaged, Wear wear, List<String> words) {
        for (WornRange range : row.worn()) {
            ToothSpan teeth = range.teeth().intersect(row.span()).intersect(engaged);
            if (range.wear() == wear && !teeth.isEmpty()) {
                words.add(which + (teeth.count() == 1 ? " tooth " + teeth.first()
                        : " teeth " + teeth.first() + " to " + teeth.last()) + " " + wear.name().toLowerCase(Locale.ROOT));
            }
        }
    }

    private static boolean barred(RowSpec row, ToothSpan engaged) {
        return row.wearOn(engaged) == Wear.BARRED;
    }
}
