// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.Corrections;
import pitchstack.model.Axis;
import pitchstack.model.MeasurementRun;

/**
 * Takes what a run has told over into the stages, from where the planner uses it.
 *
 * @param axis the axis
 * @param run one of its runs
 * @param fit what it told; a fit that came off
 * @param withIndexErrors whether errors of single indices are taken over too, in place of those that are there
 */
public record AcceptFit(Axis axis, MeasurementRun run, AxisFit fit, boolean withIndexErrors) implements Edit {
    /** Refuses what is no fit. */
    public AcceptFit {
        fit.fit().orElseThrow();
    }

    @Override
    public String label() {
        return "Accept the fit of " + RunWords.title(run);
    }

    @Override
    public void apply() {
        Corrections.apply(axis, run, fit, withIndexErrors);
    }
}
