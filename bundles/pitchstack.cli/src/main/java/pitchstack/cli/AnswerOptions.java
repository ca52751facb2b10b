// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import pitchstack.core.plan.Progress;

/** In which form a command answers, and where to. */
final class AnswerOptions {
    @Option(names = "--json", description = "Answer in JSON, for other programs.")
    private boolean json;

    @Option(names = {"-h", "--help"}, usageHelp = true, description = "Show this help.")
    private boolean help;

    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    /** Whether to answer in JSON. */
    boolean inJson() {
        return json;
    }

    /** Where the answer goes. */
    PrintWriter out() {
        return command.commandLine().getOut();
    }

    /** Watches work that may take long. */
    Progress progress() {
        return ((PitchstackCommand) command.root().userObject()).watch();
    }
}
