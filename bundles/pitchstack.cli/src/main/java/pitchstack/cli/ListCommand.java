// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.stack.AxisSpec;

/** A command that plans a list of targets, and gives an account of the plan. */
abstract class ListCommand implements Callable<Integer> {
    /** What a command makes of a plan, in each of its forms; sentences on what was not read go with it. */
    interface Account {
        /** As a file. */
        String csv();

        /** As one line for programs. */
        String json(List<String> unread);

        /** For a person. */
        void write(PrintWriter to, String heading, List<String> unread);
    }

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

    /** What this command makes of a plan. */
    abstract Account account(AxisSpec spec, SequenceRequest request, Planned planned);

    @Override
    public final Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        AxisAnalysis analysis = axis.analysis(stack, moves.approach());
        Planner planner = stack.planner(analysis);
        Optional<OutFile> written = out.file(List.of("csv"));
        StopList stops = list.stops(analysis);
        SequenceRequest request = list.request(analysis, stops, moves);
        Planned planned = Listed.plan(planner, request, answers.progress());
        Account account = account(analysis.spec(), request, planned);
        if (written.isPresent()) {
            written.get().write(account.csv());
        }
        if (answers.inJson()) {
            answers.out().println(account.json(stops.unread()));
        } else {
            account.write(answers.out(), stack.heading(), stops.unread());
        }
        return planned.leftOut() == 0 && stops.bad() == 0 ? ExitCode.YES : ExitCode.NO;
    }
}
