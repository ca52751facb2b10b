// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.OptionalLong;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/** What to plan, as typed. It is read only once the axis is known, since that gives the unit and the stages. */
final class PlanOptions {
    /** Far more than anyone chooses from, and few enough to be found at once. */
    private static final int MOST_ALTERNATIVES = 1000;

    @Option(names = "--at", paramLabel = "X", description = "The position to reach.")
    private String at;

    @Option(names = "--by", paramLabel = "D",
            description = "How far to move from where the stages stand, below 0 towards lower positions; instead of --at.")
    private String by;

    @Mixin
    private ToleranceOption tolerance;

    @Option(names = "--alternatives", paramLabel = "N", description = "List up to N further settings within tolerance.")
    private String alternatives;

    /**
     * The request.
     *
     * @param analysis the axis to plan on
     * @param moves how its stages may move
     * @throws BadInputException if an option cannot be read
     */
    PlanRequest request(AxisAnalysis analysis, MoveOptions moves) throws BadInputException {
        AxisSpec axis = analysis.spec();
        Setting start = moves.start(analysis);
        OptionalLong distance = by(axis);
        long target = distance.isPresent() ? away(axis, start, distance.getAsLong())
                : TypedLength.read(axis.scale(), "--at", at);
        return new PlanRequest(target, tolerance.of(axis), start, moves.last(analysis), moves.worn(), alternatives());
    }

    /**
     * How far to move; empty where a position was given.
     *
     * @throws BadInputException if both are given or neither, or it cannot be read
     */
    OptionalLong by(AxisSpec axis) throws BadInputException {
        if ((at == null) == (by == null)) {
            throw new BadInputException(at == null
                    ? "A target is missing; write --at with a position, or --by with how far to move."
                    : "--at and --by cannot both be given; write the position or how far to move.");
        }
        return by == null ? OptionalLong.empty() : OptionalLong.of(TypedLength.read(axis.scale(), "--by", by));
    }

    private long away(AxisSpec axis, Setting start, long distance) throws BadInputException {
        try {
            return axis.positionFrom(start, distance);
        } catch (ArithmeticException tooFar) {
            throw new BadInputException("--by: “" + by + "” from where the stages stand is more than the program can hold.");
        }
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
