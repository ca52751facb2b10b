// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.Setting;

/**
 * A change of one stage's index.
 *
 * @param stage the stage, counted from the lowest, 0
 * @param from the index before
 * @param to the index after, another one
 */
public record Step(int stage, int from, int to) {
    /** Teeth moved, positive towards higher positions of the stage. */
    public int teeth() {
        return to - from;
    }

    /** The steps from one setting to another, lowest stage first; none for a stage that stays. */
    public static List<Step> between(Setting from, Setting to) {
        List<Step> steps = new ArrayList<>();
        for (int j = 0; j < from.size(); j++) {
            if (from.index(j) != to.index(j)) {
                steps.add(new Step(j, from.index(j), to.index(j)));
            }
        }
        return steps;
    }
}
