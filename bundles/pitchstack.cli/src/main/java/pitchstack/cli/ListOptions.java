// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Locale;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;

/** Which list to plan, and in which order, as typed. */
final class ListOptions {
    private static final int MEGABYTE = 1 << 20;

    @Mixin
    private TargetsOption targets;

    @Option(names = "--order", paramLabel = "ORDER",
            description = "given (the order of the list, settings chosen so that all moves together cost least; the default), "
                    + "free (whatever order costs least), one-by-one (each in the cheapest way from the one before) or "
                    + "from-start (each from where the stages stand now).")
    private String order;

    @Option(names = "--memory", paramLabel = "MB",
            description = "How much memory the plan may take, in megabytes. Default: 512.")
    private String memory;

    /**
     * The stops.
     *
     * @throws BadInputException if there is none, or the list cannot be read
     */
    StopList stops(AxisAnalysis analysis) throws BadInputException {
        return targets.stops(analysis);
    }

    /**
     * The request.
     *
     * @throws BadInputException if an option cannot be read
     */
    SequenceRequest request(AxisAnalysis analysis, StopList stops, MoveOptions moves) throws BadInputException {
        return new SequenceRequest(stops.stops(), moves.start(analysis), moves.last(analysis), moves.worn(), order(),
                memoryBytes());
    }

    /**
     * The order.
     *
     * @throws BadInputException if the word is not known
     */
    StopOrder order() throws BadInputException {
        return switch (order == null ? "given" : order.toLowerCase(Locale.ROOT)) {
            case "given" -> StopOrder.GIVEN;
            case "free" -> StopOrder.FREE;
            case "one-by-one" -> StopOrder.ONE_BY_ONE;
            case "from-start" -> StopOrder.EACH_FROM_START;
            default -> throw new BadInputException("--order: “" + order
                    + "” is not known; write given, free, one-by-one or from-start.");
        };
    }

    /**
     * How much memory the plan may take.
     *
     * @throws BadInputException if that is no number of megabytes that there are
     */
    long memoryBytes() throws BadInputException {
        if (memory == null) {
            return SequenceRequest.DEFAULT_MEMORY;
        }
        long most = Runtime.getRuntime().maxMemory() / MEGABYTE;
        if (!memory.matches("[0-9]{1,7}") || Long.parseLong(memory) < 1 || Long.parseLong(memory) > most) {
            throw new BadInputException("--memory: “" + memory + "” is not a whole number of megabytes from 1 to " + most
                    + ", which is what Java may take here.");
        }
        return Long.parseLong(memory) * MEGABYTE;
    }
}
