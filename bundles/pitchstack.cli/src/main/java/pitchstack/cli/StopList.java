// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
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
    /** Some hundred thousand rows. */
    private static final long MOST_BYTES = 16 << 20;

    /** The targets of the file itself. */
    static StopList inFile(AxisAnalysis analysis) throws BadInputException {
        TargetStops targets = TargetStops.of(analysis);
        return new StopList(targets.stops(), targets.unread(), targets.unread().size()).orRefuse("Axis “"
                + analysis.spec().name() + "” has no targets in the file; name a list with --targets.");
    }

    /** The targets of a list. */
    static StopList inList(String file, AxisSpec axis) throws BadInputException {
        TargetList list = TargetsCsv.read(text(file), axis.scale());
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

    private static String text(String file) throws BadInputException {
        try {
            Path path = Path.of(file);
            if (Files.isRegularFile(path) && Files.size(path) > MOST_BYTES) {
                throw new BadInputException("--targets: “" + file + "” is larger than a list of targets may be, "
                        + (MOST_BYTES >> 20) + " MB.");
            }
            return Files.readString(path);
        } catch (NoSuchFileException e) {
            throw new BadInputException("--targets: there is no file “" + file + "”.");
        } catch (CharacterCodingException e) {
            throw new BadInputException("--targets: “" + file + "” is not text in UTF-8; save it as “CSV UTF-8”.");
        } catch (IOException e) {
            throw new BadInputException("--targets: “" + file + "” cannot be read (" + e.getMessage() + ").");
        } catch (InvalidPathException e) {
            throw new BadInputException("--targets: “" + file + "” cannot be the name of a file here.");
        }
    }
}
