// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.export.TargetList;
import pitchstack.export.TargetsCsv;

/**
 * The stops to plan.
 *
 * @param stops those that could be read, in the given order
 * @param unread one sentence for each that could not, and for each column that means nothing
 * @param bad how many could not be read
 */
record StopList(List<Stop> stops, List<String> unread, int bad) {
    /** The targets of the file itself. */
    static StopList inFile(AxisAnalysis analysis) throws BadInputException {
        TargetStops targets = TargetStops.of(analysis);
        return new StopList(targets.stops(), targets.unread(), targets.unread().size()).orRefuse("Axis “"
                + analysis.spec().name() + "” has no targets in the file; save some in the window, or name a list with --targets.");
    }

    /** The targets of a list. */
    static StopList inList(String file, AxisSpec axis) throws BadInputException {
        TargetList list = TargetsCsv.read(TextFile.read("--targets", file), axis.scale());
        List<Stop> stops = list.targets().stream()
                .map(row -> new Stop(row.name(), row.position(), row.tolerance().orElse(axis.tolerance()))).toList();
        List<String> unread = new ArrayList<>();
        list.bad().forEach(row -> unread.add("Line " + row.line() + ": " + row.sentence()));
        list.ignored().forEach(column -> unread.add("The column “" + column + "” is not read."));
        return new StopList(stops, unread, list.bad().size()).orRefuse("--targets: “" + file + "” has no targets.");
    }

    /** Whether a file names any target at all. */
    static boolean isInFile(AxisAnalysis analysis) {
        return !analysis.axis().getTargets().isEmpty();
    }

    private StopList orRefuse(String sentence) throws BadInputException {
        if (stops.isEmpty()) {
            throw new BadInputException(unread.isEmpty() ? sentence : sentence + " " + unread.get(0));
        }
        return this;
    }
}
