// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.export.TargetList;
import pitchstack.export.TargetsCsv;

/** Reads targets that were copied elsewhere; people often copy several columns without their header. */
final class PastedTargets {
    private static final List<String> USUAL = List.of("name\tposition\ttolerance\tnote\n", "position\ttolerance\tnote\n");

    private PastedTargets() {
    }

    /**
     * Reads a table. Without a header, several columns are taken in the order of this list: with the name first, or else
     * with the position first, whichever reads more rows.
     */
    static TargetList read(String text, Scale scale) {
        TargetList best = TargetsCsv.read(text, scale);
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        if (best.targets().isEmpty() && first.contains("\t")) {
            for (String header : USUAL) {
                TargetList read = TargetsCsv.read(header + text, scale);
                if (read.targets().size() > best.targets().size()) {
                    best = oneLineUp(read);
                }
            }
        }
        return best;
    }

    private static TargetList oneLineUp(TargetList list) {
        return new TargetList(
                list.targets().stream().map(row -> new TargetList.Row(row.line() - 1, row.name(), row.position(),
                        row.tolerance(), row.note())).toList(),
                list.bad().stream().map(row -> new TargetList.BadRow(row.line() - 1, row.sentence())).toList(),
                list.ignored());
    }
}
