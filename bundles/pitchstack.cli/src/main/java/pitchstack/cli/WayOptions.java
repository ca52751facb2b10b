// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import pitchstack.core.plan.WornPolicy;
import pitchstack.model.ApproachRule;

/** How stages may move, wherever they stand. */
final class WayOptions {
    @Option(names = "--worn", paramLabel = "WHEN",
            description = "When to offer settings over worn teeth: avoid (only where no clean one comes within tolerance; "
                    + "the default), allow (as readily as a clean one) or never.")
    private String worn;

    @Option(names = "--approach", paramLabel = "WAY",
            description = "Which way every stage that moves must end its move: forward, back or either. Default: as in the "
                    + "file.")
    private String approach;

    /**
     * When a setting over worn teeth may be offered.
     *
     * @throws BadInputException if the word is not known
     */
    WornPolicy worn() throws BadInputException {
        return switch (worn == null ? "avoid" : worn.toLowerCase(Locale.ROOT)) {
            case "avoid" -> WornPolicy.AVOID;
            case "allow" -> WornPolicy.ALLOW;
            case "never" -> WornPolicy.NEVER;
            default -> throw new BadInputException("--worn: “" + worn + "” is not known; write allow, avoid or never.");
        };
    }

    /**
     * The approach rule that is asked for instead of that of the file.
     *
     * @throws BadInputException if the word is not known
     */
    Optional<ApproachRule> approach() throws BadInputException {
        if (approach == null) {
            return Optional.empty();
        }
        return Optional.of(switch (approach.toLowerCase(Locale.ROOT)) {
            case "forward" -> ApproachRule.FORWARD;
            case "back" -> ApproachRule.BACK;
            case "either" -> ApproachRule.EITHER;
            default -> throw new BadInputException("--approach: “" + approach
                    + "” is not known; write forward, back or either.");
        });
    }
}
