// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.stack.Wear;
import pitchstack.core.stack.WornRange;

/**
 * Teeth of a row as typed: {@code Rack:base:100-101}.
 *
 * @param option which option they were typed for
 * @param text what was typed
 */
record TypedMark(String option, String text) {
    /** The name of a stage may hold colons itself. */
    private static final Pattern MARK = Pattern.compile("(.+):(base|rider):([0-9]{1,7})(?:[-–]([0-9]{1,7}))?",
            Pattern.CASE_INSENSITIVE);

    /**
     * The mark.
     *
     * @throws BadInputException if it cannot be read, or the axis has no such teeth
     */
    WearMark read(AxisSpec axis, Wear wear) throws BadInputException {
        Matcher m = MARK.matcher(text.strip());
        if (!m.matches()) {
            throw refused("is not a stretch of teeth; write it like Rack:base:100-101 or 1:rider:7.");
        }
        int stage = stage(axis, m.group(1));
        WearMark.Row row = WearMark.Row.valueOf(m.group(2).toUpperCase(Locale.ROOT));
        int first = Integer.parseInt(m.group(3));
        ToothSpan teeth = new ToothSpan(first, m.group(4) == null ? first : Integer.parseInt(m.group(4)));
        RowPair rows = axis.stages().get(stage).rows();
        ToothSpan all = row.of(rows).span();
        if (teeth.isEmpty()) {
            throw refused("ends before it begins; write the lower tooth first.");
        }
        if (!all.contains(teeth)) {
            throw refused("is beyond the row; its teeth go from 0 to " + all.last() + ".");
        }
        return new WearMark(stage, row, new WornRange(teeth, wear));
    }

    private int stage(AxisSpec axis, String name) throws BadInputException {
        int[] named = IntStream.range(0, axis.stages().size())
                .filter(j -> axis.stages().get(j).name().equalsIgnoreCase(name)).toArray();
        if (named.length == 1) {
            return named[0];
        }
        boolean number = named.length == 0 && name.matches("[0-9]{1,2}");
        if (number && Integer.parseInt(name) >= 1 && Integer.parseInt(name) <= axis.stages().size()) {
            return Integer.parseInt(name) - 1;
        }
        String names = IntStream.range(0, axis.stages().size())
                .mapToObj(j -> (j + 1) + " “" + axis.stages().get(j).name() + "”").collect(Collectors.joining(", "));
        throw refused(named.length > 1 ? "names several stages; write the number of one: " + names + "."
                : "names no stage of axis “" + axis.name() + "”; it has " + names + ".");
    }

    private BadInputException refused(String why) {
        return new BadInputException(option + ": “" + text + "” " + why);
    }
}
