// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import java.util.OptionalDouble;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.export.TargetList.BadRow;

/**
 * What a table of readings says.
 *
 * @param readings the rows that could be read, in order
 * @param open how many rows have no reading yet, as those of a plan
 * @param bad the rows that could not be read, in order
 * @param ignored the names of the columns that mean nothing here
 */
public record ReadingList(List<Row> readings, int open, List<BadRow> bad, List<String> ignored) {
    /** Copies the lists. */
    public ReadingList {
        readings = List.copyOf(readings);
        bad = List.copyOf(bad);
        ignored = List.copyOf(ignored);
    }

    /**
     * A reading.
     *
     * @param line the line of the text in which its row begins, from 1
     * @param setting where the stages stood; without any index in a table of targets
     * @param target where the carriage was meant to stand, a count of the scale; 0 in a table of settings
     * @param value what the instrument showed, a length or an angle that the scale of the axis reads
     * @param direction from which side it was approached
     * @param uncertainty standard uncertainty of this reading, a length or an angle; blank where it has none of its own
     * @param temperatureC where it has one of its own
     */
    public record Row(int line, Setting setting, long target, String value, Direction direction, String uncertainty,
            OptionalDouble temperatureC) { }
}
