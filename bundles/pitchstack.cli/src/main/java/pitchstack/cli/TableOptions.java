// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;

/** Which list to plan, and how, as typed. */
final class TableOptions {
    @Option(names = "--targets", paramLabel = "LIST",
            description = "The targets, as a .csv. Default: those in the stack file.")
    private String targets;

    @Option(names = "--from", paramLabel = "I,J,...",
            description = "Where the stages stand: one index a stage, lowest stage first. Default: as in the file.")
    private String from;

    @Option(names = "--order", paramLabel = "ORDER",
            description = "given (the order of the list, settings chosen so that all moves together cost least; the default), "
                    + "free (whatever order costs least), one-by-one (each in the cheapest way from the one before) or "
                    + "from-start (each from where the stages stand now).")
    private String order;

    @Option(names = "--out", paramLabel = "NAME", description = "Write the plan as a table too; NAME ends with .csv.")
    private String out;

    @Option(names = "--force", description = "Let --out replace a file; the old one is kept as NAME.bak~.")
    private boolean force;

    /**
     * The stops.
     *
     * @throws BadInputException if there is none, or the list cannot be read
     */
    StopList stops(AxisAnalysis analysis) throws BadInputException {
        return targets == null ? StopList.inFile(analysis) : StopList.inList(targets, analysis.spec());
    }

    /**
     * The request.
     *
     * @throws BadInputException if an option cannot be read
     */
    SequenceRequest request(AxisAnalysis analysis, StopList stops) throws BadInputException {
        AxisSpec axis = analysis.spec();
        Setting start = from == null ? StartingSetting.inFile(axis, analysis.current()) : StartingSetting.typed(axis, from);
        Directions last = from == null ? analysis.last() : Directions.unknown(start.size());
        return new SequenceRequest(stops.stops(), start, last, WornPolicy.AVOID, order(), SequenceRequest.DEFAULT_MEMORY);
    }

    private StopOrder order() throws BadInputException {
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
     * The file to write; empty where none is wanted.
     *
     * @throws BadInputException if it may not be written
     */
    Optional<OutFile> out() throws BadInputException {
        return out == null ? Optional.empty() : Optional.of(OutFile.of(out, force, List.of("csv")));
    }
}
