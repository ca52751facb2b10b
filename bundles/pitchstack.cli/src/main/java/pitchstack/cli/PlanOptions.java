// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Locale;
import picocli.CommandLine.Option;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;

/** What to plan, as typed. It is read only once the axis is known, since that gives the unit and the stages. */
final class PlanOptions {
    /** Far more than anyone chooses from, and few enough to be found at once. */
    private static final int MOST_ALTERNATIVES = 1000;

    @Option(names = "--at", paramLabel = "X", required = true, description = "The position to reach.")
    private String at;

    @Option(names = "--from", paramLabel = "I,J,...",
            description = "Where the stages stand: one index a stage, lowest stage first. Default: as in the file.")
    private String from;

    @Option(names = "--tolerance", paramLabel = "T",
            description = "The largest error that counts as reached, itself included. Default: that of the axis.")
    private String tolerance;

    @Option(names = "--worn", paramLabel = "WHEN",
            description = "When to offer settings over worn teeth: avoid (only where no clean one comes within tolerance; "
                    + "the default), allow (as readily as a clean one) or never.")
    private String worn;

    @Option(names = "--alternatives", paramLabel = "N", description = "List up to N further settings within tolerance.")
    private String alternatives;

    /**
     * The request.
     *
     * @param axis the axis to plan on
     * @param current where its stages stand in the file
     * @param last which way they moved last, in the file; not known of a setting that is typed
     * @throws BadInputException if an option cannot be read
     */
    PlanRequest request(AxisSpec axis, Setting current, Directions last) throws BadInputException {
        long target = length(axis.scale(), "--at", at);
        Setting start = from == null ? StartingSetting.inFile(axis, current) : StartingSetting.typed(axis, from);
        Directions moved = from == null ? last : Directions.unknown(start.size());
        return new PlanRequest(target, tolerance(axis), start, moved, worn(), alternatives());
    }

    private long tolerance(AxisSpec axis) throws BadInputException {
        long count = tolerance == null ? axis.tolerance() : length(axis.scale(), "--tolerance", tolerance);
        if (count < 0) {
            throw new BadInputException("--tolerance: " + axis.scale().format(count)
                    + " is below 0; a tolerance counts to both sides, so give it without a sign.");
        }
        return count;
    }

    private static long length(Scale scale, String option, String text) throws BadInputException {
        try {
            return scale.parse(text);
        } catch (QuantityException e) {
            throw new BadInputException(option + ": " + e.getMessage());
        }
    }

    private WornPolicy worn() throws BadInputException {
        if (worn == null) {
            return WornPolicy.AVOID;
        }
        for (WornPolicy policy : WornPolicy.values()) {
            if (policy.name().toLowerCase(Locale.ROOT).equals(worn.toLowerCase(Locale.ROOT))) {
                return policy;
            }
        }
        throw new BadInputException("--worn: “" + worn + "” is not known; write allow, avoid or never.");
    }

    private int alternatives() throws BadInputException {
        if (alternatives == null) {
            return 0;
        }
        if (!alternatives.matches("[0-9]{1,4}") || Integer.parseInt(alternatives) > MOST_ALTERNATIVES) {
            throw new BadInputException("--alternatives: “" + alternatives + "” is not a whole number from 0 to "
                    + MOST_ALTERNATIVES + ".");
        }
        return Integer.parseInt(alternatives);
    }

    /** Whether alternatives were asked for, be there any or not. */
    boolean listsAlternatives() {
        return alternatives != null;
    }
}
