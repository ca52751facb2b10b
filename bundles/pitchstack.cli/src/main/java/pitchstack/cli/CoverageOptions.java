// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import picocli.CommandLine.Option;
import pitchstack.core.plan.Soundness;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/** What to map, as typed. It is read only once the axis is known, since that gives the unit. */
final class CoverageOptions {
    @Option(names = "--step", paramLabel = "S",
            description = "Count also how many multiples of S inside the travel are reached.")
    private String step;

    @Option(names = "--tolerance", paramLabel = "T",
            description = "The largest error that counts as reached, itself included. Default: that of the axis.")
    private String tolerance;

    @Option(names = "--out", paramLabel = "NAME",
            description = "Write a file too: every stretch where NAME ends with .csv, a drawing of the travel where it "
                    + "ends with .svg.")
    private String out;

    @Option(names = "--force", description = "Let --out replace a file; the old one is kept as NAME.bak~.")
    private boolean force;

    /**
     * The tolerance in counts.
     *
     * @throws BadInputException if it cannot be read or is below 0
     */
    long tolerance(AxisSpec axis) throws BadInputException {
        long count = tolerance == null ? axis.tolerance() : length(axis.scale(), "--tolerance", tolerance);
        if (count < 0) {
            throw new BadInputException("--tolerance: " + axis.scale().format(count)
                    + " is below 0; a tolerance counts to both sides, so give it without a sign.");
        }
        return count;
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
        long count = length(axis.scale(), "--step", step);
        if (count <= 0 || count > Soundness.FARTHEST) {
            throw new BadInputException("--step: “" + step + "” is not a step; it must be above 0 and within the range of a"
                    + " travel.");
        }
        return OptionalLong.of(count);
    }

    /**
     * The file to write; empty where none is wanted.
     *
     * @throws BadInputException if it may not be written
     */
    Optional<OutFile> out() throws BadInputException {
        return out == null ? Optional.empty() : Optional.of(OutFile.of(out, force, List.of("csv", "svg")));
    }

    private static long length(Scale scale, String option, String text) throws BadInputException {
        try {
            return scale.parse(text);
        } catch (QuantityException e) {
            throw new BadInputException(option + ": " + e.getMessage());
        }
    }
}
