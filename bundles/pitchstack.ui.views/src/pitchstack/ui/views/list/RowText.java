// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Target;
import pitchstack.ui.views.SettingText;

/** The texts of the list's cells. */
final class RowText {
    private static final String NONE = "–";

    private RowText() {
    }

    /**
     * The texts of a row, by column.
     *
     * @param number its place in the list, from 1
     * @param entry the target
     * @param plan the plan that is shown, or {@code null}
     * @param done whether it has been set in turn
     */
    static String[] of(int number, Listing.Entry entry, ListPlan plan, boolean done) {
        String[] texts = new String[Column.values().length];
        Arrays.fill(texts, "");
        Target target = entry.target();
        texts[Column.NUMBER.ordinal()] = (done ? "✓ " : "") + number;
        texts[Column.NAME.ordinal()] = Listing.text(target.getName());
        texts[Column.POSITION.ordinal()] = Listing.text(target.getPosition());
        texts[Column.TOLERANCE.ordinal()] = Listing.text(target.getTolerance());
        texts[Column.NOTE.ordinal()] = Listing.text(target.getNote());
        if (entry.stop().isEmpty()) {
            texts[Column.ERROR.ordinal()] = "unreadable";
            texts[Column.SETTING.ordinal()] = entry.problem();
        } else if (plan != null) {
            plan.leg(target).ifPresent(leg -> answer(texts, plan, leg, plan.turn(target)));
        }
        return texts;
    }

    private static void answer(String[] texts, ListPlan plan, Leg leg, int turn) {
        AxisSpec axis = plan.axis();
        texts[Column.TURN.ordinal()] = turn == 0 ? NONE : Integer.toString(turn);
        if (leg.move().isEmpty()) {
            texts[Column.ERROR.ordinal()] = "not reached";
            texts[Column.SETTING.ordinal()] = why(axis.scale(), leg);
            return;
        }
        PlannedSetting move = leg.move().get();
        texts[Column.ERROR.ordinal()] = SettingText.error(axis.scale(), move.error());
        texts[Column.EFFORT.ordinal()] = Wording.effort(move.effortMs());
        texts[Column.REACHED.ordinal()] = TrueMinus.in(axis.scale().format(move.position()));
        texts[Column.WORN.ordinal()] = SettingText.worn(axis, move);
        texts[Column.SETTING.ordinal()] = SettingText.setting(axis, move.setting());
    }

    /** Why a target is not reached, in a few words, with the nearest positions. */
    static String why(Scale scale, Leg leg) {
        if (leg.nearest().isEmpty()) {
            return "left out, so that others are reached";
        }
        Nearest nearest = leg.nearest().get();
        String reason = switch (nearest.reason()) {
            case BETWEEN_STEPS -> "between steps";
            case BEYOND_TRAVEL -> "beyond the travel";
            case NO_MOVE -> "no move leads there";
            case UNUSABLE_TEETH -> "only over teeth that may not be used";
        };
        List<String> sides = Stream.of(
                nearest.below().map(p -> scale.format(p.position()) + " below"),
                nearest.above().map(p -> scale.format(p.position()) + " above")).flatMap(o -> o.stream()).toList();
        return sides.isEmpty() ? reason : reason + "; nearest " + String.join(", ", sides);
    }
}
