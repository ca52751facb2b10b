// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.OptionalLong;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;

/** What to map, as typed. It is read only once the axis is known, since that gives the unit. */
final class CoverageOptions {
    @Option(names = "--step", paramLabel = "S",
            description = "Count also how many multiples of S inside the travel are reached.")
    private String step;

    @Option(names = "--at", paramLabel = "X", description = "Count also how many settings reach the position X.")
    private String at;

    @Mixin
    private ToleranceOption tolerance;

    /**
     * The tolerance in counts.
     *
     * @throws BadInputException if it cannot be read or is below 0
     */
    long tolerance(AxisSpec axis) throws BadInputException {
        return tolerance.of(axis);
    }

    /**
     * The position whose settings are counted; empty where none is named.
     *
     * @throws BadInputException if it cannot be read
     */
    OptionalLong at(AxisSpec axis) throws BadInputException {
        return at == null ? OptionalLong.empty() : OptionalLong.of(TypedLength.read(axis.scale(), "--at", at));
    }

    /**
     * The step in counts; empty where none is wanted.
     *
     * @throws BadInputException if it cannot be read or is no step
     */
    OptionalLong step(AxisSpec axis) throws BadInputException {
        if (step == null) {
            return OptionalLong.empty();
        }
        long count = TypedLength.read(axis.scale(), "--step", step);
        if (count <= 0 || count > Soundness.FARTHEST) {
            throw new BadInputException("--step: “" + step + "” is not a step; it must be above 0 and within the range of a"
                    + " travel.");
        }
        return OptionalLong.of(count);
    }
}
