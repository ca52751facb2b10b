// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;

/** Which targets. */
final class TargetsOption {
    @Option(names = "--targets", paramLabel = "LIST",
            description = "The targets, as a .csv. Default: those in the stack file.")
    private String targets;

    /** Whether a list is named. */
    boolean isGiven() {
        return targets != null;
    }

    /**
     * The stops.
     *
     * @throws BadInputException if there is none, or the list cannot be read
     */
    StopList stops(AxisAnalysis analysis) throws BadInputException {
        return targets == null ? StopList.inFile(analysis) : StopList.inList(targets, analysis.spec());
    }
}
