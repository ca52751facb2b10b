// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.Scale;

/**
 * The errors of single indices of one stage, as what a fit leaves of the readings in which this stage alone moved. Of
 * several such series the one over most indices counts. What all its readings share belongs to the other stages, and is
 * taken out.
 *
 * @param stage which stage, from 0
 * @param byIndex the errors, of indices read at least twice
 * @param deviationM standard deviation of one reading, pooled from the repeats, and at least the least that any reading
 *     states: a coarse instrument repeats itself without being right
 * @param freedom its degrees of freedom
 */
public record IndexErrorMap(int stage, SortedMap<Integer, Estimate> byIndex, double deviationM, int freedom) {
    private static final double FEMTOMETRES = 1e15;
    private static final int REPEATS = 2;
    /** Two indices are a pitch and nothing beside it. */
    private static final int FEWEST_INDICES = 3;

    /** Copies the map. */
    public IndexErrorMap {
        byIndex = new TreeMap<>(byIndex);
    }

    /**
     * The errors, where the run says them: at least three indices of the stage read twice each while no other moved.
     *
     * @param stage which stage, from 0
     */
    public static Optional<IndexErrorMap> of(PitchFit fit, int stage) {
        Map<Setting, TreeMap<Integer, List<Double>>> series = new HashMap<>();
        for (Residual residual : fit.residuals()) {
            Setting setting = residual.reading().setting();
            series.computeIfAbsent(setting.with(stage, 0), others -> new TreeMap<>())
                    .computeIfAbsent(setting.index(stage), index -> new ArrayList<>()).add(residual.residualM());
        }
        series.values().forEach(one -> one.values().removeIf(readings -> readings.size() < REPEATS));
        return series.entrySet().stream()
                .max(Map.Entry.<Setting, TreeMap<Integer, List<Double>>>comparingByValue((a, b) -> a.size() - b.size())
                        .thenComparing(Map.Entry.comparingByKey()))
                .map(Map.Entry::getValue).filter(one -> one.size() >= FEWEST_INDICES)
                .map(one -> of(stage, one, statedM(fit)));
    }

    private static double statedM(PitchFit fit) {
        return fit.residuals().stream().mapToDouble(residual -> residual.reading().uncertaintyM()).min().orElseThrow();
    }

    private static IndexErrorMap of(int stage, TreeMap<Integer, List<Double>> readings, double statedM) {
        double squares = 0;
        int freedom = 0;
        double level = 0;
        for (List<Double> some : readings.values()) {
            double mean = mean(some);
            squares += some.stream().mapToDouble(x -> (x - mean) * (x - mean)).sum();
            freedom += some.size() - 1;
            level += mean / readings.size();
        }
        double deviation = Math.max(statedM, Math.sqrt(squares / freedom));
        TreeMap<Integer, Estimate> errors = new TreeMap<>();
        for (Map.Entry<Integer, List<Double>> one : readings.entrySet()) {
            errors.put(one.getKey(), new Estimate(mean(one.getValue()) - level,
                    deviation / Math.sqrt(one.getValue().size()), freedom));
        }
        return new IndexErrorMap(stage, errors, deviation, freedom);
    }

    private static double mean(List<Double> some) {
        return some.stream().mapToDouble(x -> x).sum() / some.size();
    }

    /** Only the errors that are larger than their scatter explains, at 95 % each. */
    public IndexErrorMap significant() {
        TreeMap<Integer, Estimate> kept = new TreeMap<>(byIndex);
        kept.values().removeIf(error -> !error.isSignificant());
        return new IndexErrorMap(stage, kept, deviationM, freedom);
    }

    /**
     * The errors in counts of an axis's scale, for its stage.
     *
     * @param scale linear, where errors are metres, or rotary, where they are radians
     */
    public IndexErrors errors(Scale scale) {
        double counts = scale.turn() == 0 ? FEMTOMETRES : scale.turn() / (2 * Math.PI);
        TreeMap<Integer, Long> errors = new TreeMap<>();
        byIndex.forEach((index, error) -> errors.put(index, Math.round(error.value() * counts)));
        return IndexErrors.of(errors);
    }
}
