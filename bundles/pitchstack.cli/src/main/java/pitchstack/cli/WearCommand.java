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
import pitchstack.export.SeatingsCsv;

/** Foresees where a list of targets wears the rows. */
@Command(name = "wear", sortOptions = false, header = "Counts how often a list of targets seats each tooth.",
        customSynopsis = "pitchstack wear FILE [--targets LIST.csv] [--order given|free|one-by-one|from-start]%n"
                + "                       [--memory MB] [--from I,J,...] [--worn allow|avoid|never]%n"
                + "                       [--approach forward|back|either] [--out NAME.csv [--force]]%n"
                + "                       [--axis NAME] [--temperature T] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nThe list is planned as by the command table. A tooth is seated where its stage is set down: at a "
                + "stop, and on the way where a limit makes stages take turns. A stage that stays where it is seats "
                + "nothing, nor does the tooth further of an approach rule. Where each stop is planned from the start, the "
                + "stages go back there. --out writes a .csv with one row a tooth.",
        footer = {"",
            "Examples:",
            "  pitchstack wear fence.pitchstack",
            "  pitchstack wear fence.pitchstack --targets list.csv --out seatings.csv",
            "",
            "Exit codes: 0 all stops reached, 1 some left out or not read, 2 bad input, 130 stopped."})
final class WearCommand implements Callable<Integer> {
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
        WearLog log = WearLog.of(analysis.spec(), request, planned);
        if (written.isPresent()) {
            written.get().write(SeatingsCsv.of(log.axis(), log.seatings()));
        }
        PrintWriter to = answers.out();
        if (answers.inJson()) {
            to.println(new WearJson(log).text(stops.unread()));
        } else {
            new WearText(to, log).write(stack.heading(), stops.unread());
        }
        return planned.leftOut() == 0 && stops.bad() == 0 ? ExitCode.YES : ExitCode.NO;
    }
}
