// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.nio.file.Path;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/** What is planned on: the three problems, the same with a measured error of every rack tooth, and the examples. */
public enum Case {
    /** Problem A. */
    A(Problem.A, false),
    /** Problem B. */
    B(Problem.B, false),
    /** Problem C. */
    C(Problem.C, false),
    /** Problem A with measured errors. */
    A_MEASURED(Problem.A, true),
    /** Problem B with measured errors. */
    B_MEASURED(Problem.B, true),
    /** Problem C with measured errors. */
    C_MEASURED(Problem.C, true),
    /** The cross-cut fence. */
    FENCE("cross-cut-fence"),
    /** The slide plate. */
    PLATE("slide-plate"),
    /** The ram shim. */
    SHIM("ram-shim");

    /** The system property that names the folder of the examples. */
    static final String EXAMPLES = "pitchstack.examples";
    private static final long MICROMETRE = 1_000_000_000L;
    private static final long MARGIN = 20_000 * MICROMETRE;

    private final Problem problem;
    private final boolean measured;
    private final String file;

    Case(Problem problem, boolean measured) {
        this.problem = problem;
        this.measured = measured;
        this.file = "";
    }

    Case(String file) {
        this.problem = null;
        this.measured = false;
        this.file = file + ".pitchstack";
    }

    /** Whether it is one of the examples. */
    boolean isExample() {
        return problem == null;
    }

    /** The axis, always the same. */
    AxisSpec axis() {
        if (!isExample()) {
            return measured ? problem.measuredAxis() : problem.axis();
        }
        try {
            Positioner positioner = StackFile.load(Path.of(System.getProperty(EXAMPLES), file)).positioner();
            return AxisAnalysis.of(positioner, positioner.getAxes().get(0)).spec();
        } catch (StackFileException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Targets on its axis, of a problem to a micrometre, of an example to its wanted step. */
    long[] targets(AxisSpec axis, int count) {
        return isExample() ? new Questions(axis).targets(count, axis.wantedStep().orElse(MICROMETRE), 0)
                : new Questions(axis).targets(count, MICROMETRE, MARGIN);
    }

    /** The setting in the middle of the travel, all fine stages at 0, or nearly so. */
    Setting home(AxisSpec axis) {
        int middle = (int) ((axis.low().orElseThrow() + axis.high().orElseThrow()) / 2 / axis.stages().get(0).pitch());
        return Setting.zero(axis.stages().size()).with(0, middle);
    }
}
