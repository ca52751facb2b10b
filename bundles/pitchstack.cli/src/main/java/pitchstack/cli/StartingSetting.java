// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.stream.Collectors;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.TrueMinus;

/** Where the stages stand: as typed, {@code 12,-3,3}, or as in the file. */
final class StartingSetting {
    private StartingSetting() {
    }

    /**
     * The setting in the file.
     *
     * @param axis the axis whose stages it is for
     * @param current where they stand in the file
     * @throws BadInputException if a stage stands where its rows do not meet
     */
    static Setting inFile(AxisSpec axis, Setting current) throws BadInputException {
        return possible("In the file ", axis, current);
    }

    /**
     * A setting as typed. A stage may stand over barred teeth or with too few engaged, but not where its rows do not
     * meet.
     *
     * @param axis the axis whose stages it is for
     * @param text one whole number a stage, lowest stage first, with commas between
     * @throws BadInputException if it is not that
     */
    static Setting typed(AxisSpec axis, String text) throws BadInputException {
        return typed("--from", axis, text);
    }

    /** The same, typed for another option. */
    static Setting typed(String option, AxisSpec axis, String text) throws BadInputException {
        String[] typed = text.split(",", -1);
        if (typed.length != axis.stages().size()) {
            String names = axis.stages().stream().map(s -> "“" + s.name() + "”").collect(Collectors.joining(", "));
            throw new BadInputException(option + ": “" + text + "” has " + count(typed.length, "index", "indices")
                    + ", but axis “" + axis.name() + "” has " + count(axis.stages().size(), "stage", "stages")
                    + ", lowest first: " + names + ".");
        }
        int[] indices = new int[typed.length];
        for (int j = 0; j < typed.length; j++) {
            indices[j] = index(option, typed[j].strip().replace('−', '-'));
        }
        return possible(option + ": ", axis, Setting.of(indices));
    }

    private static int index(String option, String text) throws BadInputException {
        if (!text.matches("[+-]?[0-9]{1,9}")) {
            throw new BadInputException(option + ": “" + text + "” is not an index; write whole numbers with commas between, "
                    + "like 12,-3,3.");
        }
        return Integer.parseInt(text);
    }

    private static Setting possible(String source, AxisSpec axis, Setting setting) throws BadInputException {
        for (int j = 0; j < setting.size(); j++) {
            StageSpec stage = axis.stages().get(j);
            IndexRange range = stage.rows().indices();
            if (stage.rows().engagedBase(setting.index(j)).isEmpty()) {
                throw new BadInputException(source + "stage “" + stage.name() + "” cannot stand at "
                        + TrueMinus.in("" + setting.index(j)) + ", where its rows do not meet; it moves from "
                        + TrueMinus.in(range.first() + " to " + range.last()) + ".");
            }
        }
        return setting;
    }

    private static String count(int number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }
}
