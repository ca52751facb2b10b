// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.export.MeasuringPlanCsv;
import pitchstack.export.MeasuringPlanHtml;

/** A measuring plan to write, as typed. */
final class MeasuringPlanOptions {
    private static final int MOST = 100;

    @Option(names = "--plan", paramLabel = "NAME", description = "Write what to read, as .csv to fill in or .html to print. With"
            + " readings that do not tell every stage: what would.")
    private String plan;

    @Option(names = "--points", paramLabel = "N", description = "Settings a stage in the plan. Default: ${DEFAULT-VALUE}.",
            defaultValue = "5")
    private String points;

    @Option(names = "--runs", paramLabel = "N", description = "How often each is read from either side, in the plan. Default:"
            + " ${DEFAULT-VALUE}.", defaultValue = "" + Positioning.STANDARD_VISITS)
    private String runs;

    @Option(names = "--force", description = "Let --plan replace a file; the old one is kept as NAME.bak~.")
    private boolean force;

    /** Whether a plan is wanted. */
    boolean isGiven() {
        return plan != null;
    }

    /**
     * Writes the plan: of some settings, or where there are none of the whole axis.
     *
     * @throws BadInputException if the file may not be written or a number cannot be read
     */
    void write(PrintWriter out, LoadedStack stack, AxisAnalysis analysis, List<Setting> settings) throws BadInputException {
        OutFile file = OutFile.of("--plan", plan, force, List.of("csv", "html"));
        Setting home = StartingSetting.inFile(analysis.spec(), analysis.current());
        List<MeasuringPlan.Line> lines = settings.isEmpty()
                ? MeasuringPlan.of(analysis.spec(), home, number("--points", points, 2), number("--runs", runs, 1))
                : lines(settings, number("--runs", runs, 1));
        file.write(file.ending().equals("csv") ? MeasuringPlanCsv.of(analysis.spec(), lines)
                : MeasuringPlanHtml.of(stack.title(), analysis.spec(), lines));
        out.println("Written: “" + plan + "”, " + lines.size() + " readings to take.");
    }

    private static List<MeasuringPlan.Line> lines(List<Setting> settings, int runs) {
        List<MeasuringPlan.Line> lines = new ArrayList<>();
        for (int run = 1; run <= runs; run++) {
            for (Setting setting : settings) {
                lines.add(new MeasuringPlan.Line(run, setting, Direction.FORWARD));
                lines.add(new MeasuringPlan.Line(run, setting, Direction.BACK));
            }
        }
        return lines;
    }

    private static int number(String option, String text, int least) throws BadInputException {
        if (!text.matches("[0-9]{1,3}") || Integer.parseInt(text) < least || Integer.parseInt(text) > MOST) {
            throw new BadInputException(option + ": “" + text + "” is not a whole number from " + least + " to " + MOST + ".");
        }
        return Integer.parseInt(text);
    }
}
