// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import picocli.CommandLine.Option;
import pitchstack.core.stack.AxisSpec;

/** The tolerance, as typed. */
final class ToleranceOption {
    @Option(names = "--tolerance", paramLabel = "T",
            description = "The largest error that counts as reached, itself included. Default: that of the axis.")
    private String tolerance;

    /**
     * The tolerance in counts.
     *
     * @throws BadInputException if it cannot be read or is below 0
     */
    long of(AxisSpec axis) throws BadInputException {
        long count = tolerance == null ? axis.tolerance() : TypedLength.read(axis.scale(), "--tolerance", tolerance);
        if (count < 0) {
            throw new BadInputException("--tolerance: “" + tolerance
                    + "” is below 0; a tolerance counts to both sides, so give it without a sign.");
        }
        return count;
    }
}
