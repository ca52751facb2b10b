// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.io.IOException;
import java.nio.file.Path;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.WornPolicy;
import pitchstack.model.Positioner;
import pitchstack.model.Target;
import pitchstack.model.file.StackFile;

/**
 * An example file that is shipped with the program, and the analysis of its one axis.
 *
 * @param file where it lies in the source tree
 * @param positioner what it holds
 * @param analysis of its axis
 */
record Example(Path file, Positioner positioner, AxisAnalysis analysis) {
    /** Loads one by its name without the ending. */
    static Example load(String name) throws IOException {
        Path file = Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("../..").normalize()
                .resolve("bundles/pitchstack.help/examples").resolve(name + "." + StackFile.EXTENSION);
        Positioner positioner = StackFile.load(file).positioner();
        return new Example(file, positioner, AxisAnalysis.of(positioner, positioner.getAxes().get(0)));
    }

    /** Plans one of its targets from where the stages stand, preferring clean teeth. */
    Answer plan(String name) {
        Target target = analysis.axis().getTargets().stream().filter(t -> t.getName().equals(name)).findFirst()
                .orElseThrow();
        long tolerance = target.getTolerance() == null ? analysis.spec().tolerance()
                : analysis.spec().scale().parse(target.getTolerance());
        return plan(analysis.spec().scale().parse(target.getPosition()), tolerance);
    }

    /** Plans a position from where the stages stand, preferring clean teeth. */
    Answer plan(long position, long tolerance) {
        return analysis.planner().orElseThrow()
                .plan(new PlanRequest(position, tolerance, analysis.current(), WornPolicy.AVOID, 0));
    }
}
