// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine.Command;
import pitchstack.core.plan.SequenceAnswer.Planned;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.stack.AxisSpec;
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
final class TableCommand extends ListCommand {
    @Override
    Account account(AxisSpec axis, SequenceRequest request, Planned planned) {
        return new Account() {
            @Override
            public String csv() {
                return PlanCsv.of(axis, request.stops(), planned.legs());
            }

            @Override
            public String json(List<String> unread) {
                return new TableJson(axis, request).of(planned, unread);
            }

            @Override
            public void write(PrintWriter to, String heading, List<String> unread) {
                new TableText(to, axis, request).write(heading, planned, unread);
            }
        };
    }
}
