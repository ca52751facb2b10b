// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.TargetVisits;
import pitchstack.core.accuracy.evaluation.ZeroReturns;
import pitchstack.core.accuracy.fit.Reading;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;

/**
 * What repeated visits of a run say: the figures of ISO 230-2, and how well the carriage comes back.
 *
 * @param positioning the figures, where a setting was visited twice from the same side
 * @param settings of the targets of the figures, in their order; empty for a run without settings
 * @param returns the repeat test, where a setting was visited three times from the same side
 * @param remarks one sentence for everything that is left out, and for what the run lacks
 */
public record RunEvaluation(Optional<Positioning> positioning, List<Setting> settings, Optional<Returns> returns,
        List<String> remarks) {
    private static final int FEWEST_RETURNS = 3;

    /**
     * Visits of one setting.
     *
     * @param setting which; all indices at 0 where that was visited often enough, otherwise the one visited most often
     * @param direction the side from which it was visited most often
     * @param figures of these visits, from where the file puts the carriage
     */
    public record Returns(Setting setting, Direction direction, ZeroReturns figures) { }

    /** Copies the lists. */
    public RunEvaluation {
        settings = List.copyOf(settings);
        remarks = List.copyOf(remarks);
    }

    /** Evaluates a run; deviations are from where the file as it stands puts the carriage. */
    public static RunEvaluation of(RunReading run) {
        Map<Setting, Map<Direction, List<Double>>> bySetting = new TreeMap<>();
        Map<Setting, Double> targets = new TreeMap<>();
        for (int i = 0; i < run.readings().size(); i++) {
            Reading reading = run.readings().get(i);
            targets.putIfAbsent(reading.setting(), run.expectedM().get(i));
            bySetting.computeIfAbsent(reading.setting(), setting -> new TreeMap<>())
                    .computeIfAbsent(reading.direction(), direction -> new ArrayList<>()).add(run.deviationM(i));
        }
        List<Setting> settings = targets.entrySet().stream().sorted(Map.Entry.<Setting, Double>comparingByValue()
                .thenComparing(Map.Entry.comparingByKey())).map(Map.Entry::getKey).toList();
        List<TargetVisits> visits = settings.stream().map(setting -> new TargetVisits(targets.get(setting),
                bySetting.get(setting).getOrDefault(Direction.FORWARD, List.of()),
                bySetting.get(setting).getOrDefault(Direction.BACK, List.of()))).toList();
        List<String> remarks = new ArrayList<>();
        long silent = run.readings().stream().filter(reading -> reading.direction() == Direction.UNKNOWN).count();
        if (silent > 0) {
            remarks.add(silent + (silent == 1 ? " reading does" : " readings do")
                    + " not say from which side it was approached and " + (silent == 1 ? "is" : "are") + " left out.");
        }
        PositioningSelection selection = PositioningSelection.of(visits);
        remarks.addAll(selection.remarks());
        return new RunEvaluation(selection.positioning(), selection.kept().stream().map(settings::get).toList(),
                returns(bySetting), remarks);
    }

    private static Optional<Returns> returns(Map<Setting, Map<Direction, List<Double>>> bySetting) {
        List<Returns> found = new ArrayList<>();
        bySetting.forEach((setting, sides) -> sides.entrySet().stream()
                .filter(side -> side.getValue().size() >= FEWEST_RETURNS)
                .max(Comparator.comparingInt(side -> side.getValue().size()))
                .ifPresent(side -> found.add(new Returns(setting, side.getKey(), ZeroReturns.of(side.getValue())))));
        return found.stream().filter(one -> one.setting().toList().stream().allMatch(index -> index == 0)).findFirst()
                .or(() -> found.stream().max(Comparator.comparingInt(one -> one.figures().count())));
    }
}
