// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.export.PlanCsv;

/** Plans a list of targets. */
@Command(name = "table", sortOptions = false, header = "Plans a whole list of targets with the least effort.",
        customSynopsis = "pitchstack table FILE [--targets LIST.csv] [--order given|free|one-by-one|from-start]%n"
                + "                        [--memory MB] [--from I,J,...] [--worn allow|avoid|never]%n"
                + "                        [--approach forward|back|either] [--out NAME.csv [--force]]%n"
                + "                        [--axis NAME] [--temperature T] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nA list has a header with the columns name, position, tolerance and note in any order, or positions "
                + "alone; commas, semicolons or tabs; a decimal comma or point; a unit in the header, like position (mm), "
                + "in the cell, or else that of the file. --out writes a .csv with one row a stop.",
        footer = {"",
            "Examples:",
            "  pitchstack table fence.pitchstack",
            "  pitchstack table fence.pitchstack --targets list.csv --order free --out plan.csv",
            "",
            "Long work tells how far it is on the error stream; Ctrl+C stops it, and nothing is written.",
            "",
            "Exit codes: 0 all reached, 1 some left out or not read, 2 bad input, 130 stopped."})
final class TableCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private ListOptions list;

    @Mixin
    private MoveOptions moves;

    @Mixin
    private OutOptions out;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        AxisAnalysis analysis = axis.analysis(stack, moves.approach());
        Planner planner = stack.planner(analysis);
        Optional<OutFile> written = out.file("csv");
        StopList stops = list.stops(analysis);
        SequenceRequest request = list.request(analysis, stops, moves);
        Planned planned = Listed.plan(planner, request, answers.progress());
        if (written.isPresent()) {
            written.get().write(PlanCsv.of(analysis.spec(), request.stops(), planned.legs()));
        }
        PrintWriter to = answers.out();
        if (answers.inJson()) {
            to.println(new TableJson(analysis.spec(), request).of(planned, stops.unread()));
        } else {
            new TableText(to, analysis.spec(), request).write(stack.heading(), planned, stops.unread());
        }
        return planned.leftOut() == 0 && stops.bad() == 0 ? ExitCode.YES : ExitCode.NO;
    }
}
