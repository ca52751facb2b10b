// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * Settings that would let a run tell what it cannot: each time the one that says most beside what is there (greedy
 * D-optimal design), of those where one stage alone has moved as far as it may.
 */
public final class TellingSettings {
    /** So little is known without any reading that it does not matter, yet enough to invert the matrix. */
    private static final double NEXT_TO_NOTHING = 1e-12;

    private final List<StageScale> stages;
    private final List<Setting> candidates;

    /**
     * For an axis.
     *
     * @param axis where the stages may go
     * @param home the setting from which one stage alone moves, an allowed one
     */
    public TellingSettings(AxisSpec axis, Setting home, List<StageScale> stages) {
        this.stages = List.copyOf(stages);
        Allowed allowed = new Allowed(axis);
        Set<Setting> ends = new LinkedHashSet<>(List.of(home));
        for (int j = 0; j < stages.size(); j++) {
            ends.add(allowed.towards(home, j, axis.stages().get(j).rows().indices().last()));
            ends.add(allowed.towards(home, j, axis.stages().get(j).rows().indices().first()));
        }
        candidates = List.copyOf(ends);
    }

    /**
     * The settings to add to a run, most telling first; none where it tells all. Where the axis cannot move a stage at all
     * they do not suffice.
     *
     * @param settings those of the run, possibly none
     */
    public List<Setting> beside(List<Setting> settings) {
        RealMatrix known = MatrixUtils.createRealIdentityMatrix(1 + stages.size()).scalarMultiply(NEXT_TO_NOTHING);
        for (Setting setting : settings) {
            known = known.add(square(setting));
        }
        List<Setting> added = new ArrayList<>();
        for (int left = candidates.size(); left > 0; left--) {
            Setting best = mostTelling(known);
            if (isKnown(known, row(best))) {
                return added;
            }
            added.add(best);
            known = known.add(square(best));
        }
        return added;
    }

    private Setting mostTelling(RealMatrix known) {
        RealMatrix inverse = MatrixUtils.inverse(known);
        Setting best = candidates.get(0);
        double most = 0;
        for (Setting candidate : candidates) {
            RealVector row = row(candidate);
            double told = row.dotProduct(inverse.operate(row));
            if (told > most) {
                most = told;
                best = candidate;
            }
        }
        return best;
    }

    /** A direction that readings see adds no more than a few; one that none sees adds as good as infinitely much. */
    private boolean isKnown(RealMatrix known, RealVector row) {
        return row.dotProduct(MatrixUtils.inverse(known).operate(row)) < 1 / Math.sqrt(NEXT_TO_NOTHING);
    }

    private RealMatrix square(Setting setting) {
        return row(setting).outerProduct(row(setting));
    }

    /** In parts of the longest way among the candidates, so that no stage counts for more because its teeth are larger. */
    private RealVector row(Setting setting) {
        RealVector row = MatrixUtils.createRealVector(new double[1 + stages.size()]);
        row.setEntry(0, 1);
        for (int j = 0; j < stages.size(); j++) {
            int stage = j;
            int longest = candidates.stream().mapToInt(c -> Math.abs(c.index(stage))).max().orElse(1);
            row.setEntry(1 + j, setting.index(j) / (double) Math.max(1, longest));
        }
        return row;
    }
}
