// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import pitchstack.core.coverage.WearMark;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;

/** Teeth supposed to be worse than they are, as typed. */
final class MarkOptions {
    @Option(names = "--bar", paramLabel = "TEETH",
            description = "Suppose teeth barred besides those that are: STAGE:base:FIRST-LAST or STAGE:rider:FIRST-LAST, with "
                    + "the name of the stage or its number from 1 and the teeth from 0. May be given several times.")
    private List<String> barred = new ArrayList<>();

    @Option(names = "--wear", paramLabel = "TEETH", description = "The same, and suppose them worn.")
    private List<String> worn = new ArrayList<>();

    /**
     * The marks, in the order of the options.
     *
     * @throws BadInputException if one cannot be read, or the axis has no such teeth
     */
    List<WearMark> on(AxisSpec axis) throws BadInputException {
        List<WearMark> marks = new ArrayList<>();
        for (String text : barred) {
            marks.add(new TypedMark("--bar", text).read(axis, Wear.BARRED));
        }
        for (String text : worn) {
            marks.add(new TypedMark("--wear", text).read(axis, Wear.WORN));
        }
        return marks;
    }
}
