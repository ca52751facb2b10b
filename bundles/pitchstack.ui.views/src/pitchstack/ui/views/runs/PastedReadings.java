// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.edit.TypedText;
import pitchstack.export.ReadingList;
import pitchstack.export.ReadingsCsv;
import pitchstack.export.TargetList;

/** Reads readings that were copied elsewhere; people often copy columns without their header. */
final class PastedReadings {
    private PastedReadings() {
    }

    /** A table with a header, or without one the indices of all stages, the direction and the reading, or all but that. */
    static ReadingList read(String text, AxisSpec axis) {
        ReadingList best = ReadingsCsv.read(text, axis);
        boolean tabs = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("").contains("\t");
        if (best.readings().isEmpty() && best.open() == 0 && tabs) {
            String indices = IntStream.rangeClosed(1, axis.stages().size()).mapToObj(j -> "Stage " + j)
                    .collect(Collectors.joining("\t"));
            for (String rest : List.of("\tdirection\tposition\n", "\tposition\n")) {
                ReadingList read = ReadingsCsv.read(indices + rest + text, axis);
                best = read.readings().size() > best.readings().size() ? oneLineUp(read) : best;
            }
        }
        return best;
    }

    private static ReadingList oneLineUp(ReadingList list) {
        return new ReadingList(list.readings(), list.open(), list.bad().stream()
                .map(row -> new TargetList.BadRow(row.line() - 1, row.sentence())).toList(), list.ignored());
    }

    /**
     * What was copied as one column of numbers, one a line, as they go into readings that are there; empty if it is not one.
     *
     * @param scale reads each
     */
    static List<String> column(String text, Scale scale) {
        List<String> values = text.lines().map(String::strip).filter(line -> !line.isEmpty())
                .map(line -> line.replace(',', '.').replace('−', '-')).toList();
        try {
            return values.stream().map(value -> TypedText.withUnit(value, scale)).toList();
        } catch (QuantityException notNumbers) {
            return List.of();
        }
    }
}
