// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.model.ApproachRule;

/** From where the stages move, and how they may. */
final class MoveOptions {
    @Option(names = "--from", paramLabel = "I,J,...",
            description = "Where the stages stand: one index a stage, lowest stage first. Default: as in the file.")
    private String from;

    @Mixin
    private WayOptions ways;

    /**
     * Where the stages stand.
     *
     * @throws BadInputException if that cannot be read, or is not possible
     */
    Setting start(AxisAnalysis analysis) throws BadInputException {
        return from == null ? StartingSetting.inFile(analysis.spec(), analysis.current())
                : StartingSetting.typed(analysis.spec(), from);
    }

    /** Which way they moved last; not known of a setting that is typed. */
    Directions last(AxisAnalysis analysis) {
        return from == null ? analysis.last() : Directions.unknown(analysis.spec().stages().size());
    }

    /**
     * When a setting over worn teeth may be offered.
     *
     * @throws BadInputException if the word is not known
     */
    WornPolicy worn() throws BadInputException {
        return ways.worn();
    }

    /**
     * The approach rule that is asked for instead of that of the file.
     *
     * @throws BadInputException if the word is not known
     */
    Optional<ApproachRule> approach() throws BadInputException {
        return ways.approach();
    }
}
