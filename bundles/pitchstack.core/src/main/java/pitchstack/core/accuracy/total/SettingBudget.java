// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.accuracy.budget.Budget;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.accuracy.teeth.TwoFlankLaw;
import pitchstack.core.stack.Setting;

/**
 * The budget of the position of a setting from the datum, which was set with every index at 0. Contributions of 0 are left
 * out. Seats vary from time to time; scales, teeth and the datum come back the same and can be measured.
 */
public final class SettingBudget {
    private final AxisAccuracy axis;
    private final Setting setting;
    private final ScaleLines scales;
    private final List<Contribution> others = new ArrayList<>();

    private SettingBudget(AxisAccuracy axis, Setting setting) {
        this.axis = axis;
        this.setting = setting;
        scales = new ScaleLines(axis, setting);
    }

    /**
     * The budget.
     *
     * @param setting with an index for every stage at which its rows meet
     * @throws IllegalArgumentException if the rows of a stage do not meet
     */
    public static Budget of(AxisAccuracy axis, Setting setting) {
        SettingBudget budget = new SettingBudget(axis, setting);
        for (int j = 0; j < axis.stages().size(); j++) {
            budget.addTeeth(axis.stages().get(j), setting.index(j));
        }
        if (!axis.rotary()) {
            budget.others.addAll(WarmthLines.of(axis, setting));
        }
        budget.add(Contribution.believed(Cause.DATUM.name(""), Distribution.NORMAL, axis.datumM()));
        List<Contribution> all = new ArrayList<>(budget.scales.lines());
        all.addAll(budget.others);
        return new Budget(all, budget.scales.correlations());
    }

    private void addTeeth(StageAccuracy stage, int index) {
        int engaged = stage.rows().engagedBase(index).count();
        if (engaged == 0) {
            throw new IllegalArgumentException(stage.title() + ": no tooth is engaged at index " + index + " of " + setting);
        }
        Optional<TwoFlankLaw.Point> held = held(stage, engaged);
        double partly = held.map(point -> point.spreadM() / averaged(stage, engaged)).orElse(1.0);
        Double mapped = stage.mappedM().get(index);
        add(mapped != null ? Contribution.believed(Cause.MAPPED.name(stage.title()), Distribution.NORMAL, mapped)
                : Contribution.believed(Cause.TEETH.name(stage.title()), Distribution.NORMAL,
                        ToothErrors.spreadM(stage, index) * partly));
        add(Contribution.believed(Cause.SEAT.name(stage.title()), Distribution.NORMAL,
                stage.seatM() / Math.sqrt(2.0 * engaged) * partly).that(Persistence.VARIES));
        held.ifPresent(point -> add(Contribution.believed(Cause.FRICTION.name(stage.title()), Distribution.RECTANGULAR,
                point.deadBandM()).that(Persistence.VARIES)));
    }

    /** The scatter of one tooth pair's flank: both rows'. */
    private static double scatterM(StageAccuracy stage) {
        return Math.hypot(stage.base().scatterM(), stage.rider().scatterM());
    }

    private static double averaged(StageAccuracy stage, int engaged) {
        return scatterM(stage) / Math.sqrt(2.0 * engaged);
    }

    /** Teeth without scatter all bear at once; there is then nothing for the law to say. */
    private static Optional<TwoFlankLaw.Point> held(StageAccuracy stage, int engaged) {
        return stage.hold().filter(hold -> scatterM(stage) > 0).map(hold -> new TwoFlankLaw(engaged, hold.stiffnessNPerM(),
                scatterM(stage), hold.flankAngleRad()).at(hold.preloadN(), hold.friction()));
    }

    private void add(Contribution line) {
        if (line.amount() != 0) {
            others.add(line);
        }
    }
}
