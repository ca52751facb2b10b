// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.stack.StageSpec;

/** A check that looks at one stage at a time. */
interface StageCheck extends Check {
    /**
     * Looks at one stage.
     *
     * @param subject the axis and what is known of the shop
     * @param stage the stage
     * @param j its place, counted from the lowest, 0
     */
    Optional<Finding> at(Subject subject, StageSpec stage, int j);

    @Override
    default List<Finding> apply(Subject subject) {
        List<StageSpec> stages = subject.axis().stages();
        return IntStream.range(0, stages.size()).mapToObj(j -> at(subject, stages.get(j), j))
                .flatMap(Optional::stream).toList();
    }
}
