// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Correlation;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Method;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.stack.Setting;

/** The lines of a budget for how long the rows are, and how these hang together. */
final class ScaleLines {
    private final AxisAccuracy axis;
    private final List<Contribution> lines = new ArrayList<>();
    private final List<Correlation> correlations = new ArrayList<>();
    /** Of each line the set-up of its row, blank where it shares its scale with no other; and its stage where it was fitted. */
    private final List<String> setUps = new ArrayList<>();
    private final List<Integer> fittedStages = new ArrayList<>();

    ScaleLines(AxisAccuracy axis, Setting setting) {
        this.axis = axis;
        for (int j = 0; j < axis.stages().size(); j++) {
            addStage(j, setting.index(j));
        }
    }

    List<Contribution> lines() {
        return lines;
    }

    List<Correlation> correlations() {
        return correlations;
    }

    private void addStage(int number, int index) {
        StageAccuracy stage = axis.stages().get(number);
        CountedFace face = new CountedFace(stage.rows());
        if (axis.fitted().isPresent() && axis.fitted().get().stages().contains(number)) {
            double variance = axis.fitted().get().covariances()[number][number];
            add(new Contribution(Cause.FITTED_PITCH.name(stage.title()), Method.TYPE_A, Distribution.STUDENT,
                    Math.sqrt(variance), stage.pitchM() * face.basePitches(index), axis.fitted().get().degreesOfFreedom(),
                    Persistence.REPEATS), "", number);
        } else {
            add(Cause.BASE_ROW.name(stage.title()), stage, stage.base().length(), face.basePitches(index), index);
        }
        add(Cause.RIDER_ROW.name(stage.title()), stage, stage.rider().length(), face.riderPitches(index),
                (int) Math.ceil(Math.abs(face.riderPitches(index))));
    }

    private void add(String name, StageAccuracy stage, RowLength length, double pitches, int teeth) {
        if (length instanceof RowLength.Scaled scaled) {
            add(Contribution.believed(name, Distribution.NORMAL, scaled.uncertainty()).times(stage.pitchM() * pitches),
                    scaled.setUp(), -1);
        } else if (length instanceof RowLength.Graded graded && pitches != 0) {
            double u = graded.tolerance().believedM(Math.abs(teeth));
            add(new Contribution(name + ", by its grade", Method.TYPE_B, Distribution.TRIANGULAR, u, 1,
                    Double.POSITIVE_INFINITY, Persistence.REPEATS), "", -1);
        }
    }

    private void add(Contribution line, String setUp, int fittedStage) {
        if (line.amount() == 0) {
            return;
        }
        int place = lines.size();
        for (int i = 0; i < place; i++) {
            double r = correlation(i, setUp, fittedStage);
            if (r != 0) {
                correlations.add(new Correlation(i, place, Math.max(-1, Math.min(1, r))));
            }
        }
        lines.add(line);
        setUps.add(setUp);
        fittedStages.add(fittedStage);
    }

    private double correlation(int earlier, String setUp, int fittedStage) {
        int other = fittedStages.get(earlier);
        if (fittedStage >= 0 && other >= 0) {
            double[][] c = axis.fitted().orElseThrow().covariances();
            return c[other][fittedStage] / Math.sqrt(c[other][other] * c[fittedStage][fittedStage]);
        }
        return !setUp.isBlank() && setUp.equals(setUps.get(earlier)) ? axis.sharedScale() : 0;
    }
}
