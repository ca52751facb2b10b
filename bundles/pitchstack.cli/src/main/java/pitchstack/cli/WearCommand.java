// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.stack.AxisSpec;
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
final class WearCommand extends ListCommand {
    @Override
    Account account(AxisSpec axis, SequenceRequest request, Planned planned) {
        WearLog log = WearLog.of(axis, request, planned);
        return new Account() {
            @Override
            public String csv() {
                return SeatingsCsv.of(axis, log.seatings());
            }

            @Override
            public String json(List<String> unread) {
                return new WearJson(log).text(unread);
            }

            @Override
            public void write(PrintWriter to, String heading, List<String> unread) {
                new WearText(to, log).write(heading, unread);
            }
        };
    }
}
