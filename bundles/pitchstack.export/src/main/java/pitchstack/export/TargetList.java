// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import java.util.OptionalLong;

/**
 * What a table of targets says.
 *
 * @param targets the rows that could be read, in order
 * @param bad the rows that could not, in order
 * @param ignored the names of the columns that mean nothing here
 */
public record TargetList(List<Row> targets, List<BadRow> bad, List<String> ignored) {
    /** Copies the lists. */
    public TargetList {
        targets = List.copyOf(targets);
        bad = List.copyOf(bad);
        ignored = List.copyOf(ignored);
    }

    /**
     * A target.
     *
     * @param line the line of the text in which its row begins, from 1
     * @param name what people call it, or nothing
     * @param position where, a count of the scale
     * @param tolerance its own tolerance, at least 0, where it has one
     * @param note a remark, or nothing
     */
    public record Row(int line, String name, long position, OptionalLong tolerance, String note) { }

    /**
     * A row that cannot be read.
     *
     * @param line the line of the text in which it begins, from 1
     * @param sentence what is wrong with it
     */
    public record BadRow(int line, String sentence) { }
}
