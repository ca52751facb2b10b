// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

import java.util.Optional;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.FinestStep;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.coverage.Reach;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

/**
 * What a stack really reaches, worked out as its coverage and not from how it was found.
 *
 * @param coverage of the whole travel, within half the step that is wanted
 * @param finest the widest spacing of neighbouring positions
 * @param step the step that is wanted, in counts
 */
public record Proof(CoverageSummary coverage, FinestStep finest, long step) {
    /**
     * Works it out.
     *
     * @param axis a sound axis
     * @param step the step that is wanted, above 0; within half of it, rounded up, every position is to be reached
     */
    public static Outcome<Proof> of(AxisSpec axis, long step, Progress progress) {
        return Reach.of(axis, progress).then(reach -> reach.coverage(step / 2 + step % 2, progress)
                .then(coverage -> reach.finestStep(Wear.CLEAN, progress).then(finest -> proof(coverage.summary(), finest, step))));
    }

    private static Outcome<Proof> proof(CoverageSummary coverage, Optional<FinestStep> finest, long step) {
        return finest.<Outcome<Proof>>map(found -> new Outcome.Done<>(new Proof(coverage, found, step)))
                .orElseGet(() -> new Outcome.Refused<>("Nothing can be set on this axis; lengthen its rows."));
    }

    /** Whether the travel is reached everywhere, over clean teeth, in steps as fine as wanted. */
    public boolean holds() {
        return coverage.travel() > 0 && coverage.clean() == coverage.travel() && finest.spacing() <= step;
    }
}
