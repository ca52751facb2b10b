// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.plan.Leg;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceAnswer;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.Sequences;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.export.PlanCsv;

/**
 * Plans a list of targets from home and puts it on a card. Each target has one setting, whichever way it is come to: the
 * plan of the list chooses it, and the move from home leads to the same.
 */
public final class CardMaker {
    private final CardRequest request;
    private final Planner planner;
    private final AxisSpec axis;
    private final Setting home;

    private CardMaker(CardRequest request, Planner planner) {
        this.request = request;
        this.planner = planner;
        axis = request.analysis().spec();
        home = home(axis);
    }

    /**
     * The card.
     *
     * @param planner of the axis
     * @param progress is told how far the work is, and asked whether to go on
     */
    public static CardAnswer make(CardRequest request, Planner planner, Progress progress) {
        return new CardMaker(request, planner).make(progress);
    }

    /** Every index 0, or the nearest to it in its range. */
    static Setting home(AxisSpec axis) {
        return Setting.of(axis.stages().stream().mapToInt(stage -> stage.rows().indices().clamp(0)).toArray());
    }

    private CardAnswer make(Progress progress) {
        SequenceAnswer answer = Sequences.plan(planner, new SequenceRequest(request.stops(), home,
                Directions.unknown(home.size()), request.worn(), request.order(), request.memoryBytes()), progress);
        if (answer instanceof SequenceAnswer.Refused refused) {
            return new CardAnswer.Refused(refused.sentence());
        }
        return answer instanceof Planned planned ? new CardAnswer.Made(card(planned)) : new CardAnswer.Stopped();
    }

    private SettingCard card(Planned planned) {
        List<SettingCard.Entry> entries = new ArrayList<>();
        planned.legs().forEach(leg -> entries.add(entry(leg)));
        return new SettingCard(CardWords.head(request), axis, home, CardWords.holds(request), CardWords.CAUTIONS, entries,
                PocketTable.of(axis));
    }

    private SettingCard.Entry entry(Leg leg) {
        Stop stop = request.stops().get(leg.stop());
        return new SettingCard.Entry(leg.stop() + 1, stop.name(), stop.target(), stop.tolerance(),
                leg.move().map(move -> new SettingCard.Way(move, fromHome(move, stop))),
                leg.move().isPresent() ? "" : PlanCsv.why(axis, stop, leg));
    }

    private Optional<PlannedSetting> fromHome(PlannedSetting move, Stop stop) {
        return planner.move(move.setting(), stop.target(), home, Directions.unknown(home.size()));
    }
}
