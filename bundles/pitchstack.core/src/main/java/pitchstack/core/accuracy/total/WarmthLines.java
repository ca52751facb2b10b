// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import pitchstack.core.accuracy.budget.Contribution;
import pitchstack.core.accuracy.budget.Distribution;
import pitchstack.core.accuracy.budget.Persistence;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.thermal.Growth;
import pitchstack.core.stack.Setting;

/**
 * The lines of a budget for warmth: what is not known of the temperature, and of each coefficient of expansion. The work,
 * where it counts, grows against the stack.
 */
final class WarmthLines {
    private WarmthLines() {
    }

    static List<Contribution> of(AxisAccuracy axis, Setting setting) {
        List<Growth.Part> chain = GrowthChain.of(axis, setting);
        double doubtK = axis.temperature().uncertaintyK();
        double riseK = axis.temperature().overReferenceK();
        double growthPerK = chain.stream().mapToDouble(part -> part.lengthM() * part.expansion().perK()).sum();
        List<Contribution> lines = new ArrayList<>();
        lines.add(Contribution.believed(Cause.TEMPERATURE.name(""), Distribution.NORMAL, doubtK).times(growthPerK)
                .that(Persistence.VARIES));
        for (Map.Entry<Expansion, Double> one : Growth.byMaterial(chain).entrySet()) {
            Expansion expansion = one.getKey();
            String perK = String.format(Locale.ROOT, "%.1f ppm/K", expansion.perK() * 1e6);
            lines.add(Contribution.believed(Cause.EXPANSION.name(perK), Distribution.NORMAL, expansion.uncertaintyPerK())
                    .times(one.getValue() * riseK));
            lines.add(Contribution.secondOrder(Cause.SECOND_ORDER.name(perK), expansion.uncertaintyPerK(), doubtK)
                    .times(one.getValue()).that(Persistence.VARIES));
        }
        lines.removeIf(line -> line.amount() == 0);
        return lines;
    }
}
