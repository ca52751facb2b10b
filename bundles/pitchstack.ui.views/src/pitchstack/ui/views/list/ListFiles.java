// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.Optional;
import pitchstack.export.PlanCsv;
import pitchstack.export.TargetsCsv;
import pitchstack.ui.views.TextFiles;

/** Reads targets from CSV files, and writes targets and plans to them. */
final class ListFiles {
    private final ListPlanning planning;
    private final ListTexts texts;

    ListFiles(ListPlanning planning, ListTexts texts) {
        this.planning = planning;
        this.texts = texts;
    }

    private TextFiles files() {
        return TextFiles.tables(planning.page().control().getShell());
    }

    /** Asks for a file, and adds its targets. */
    void read() {
        files().read("Import Targets").ifPresent(file -> texts.add(
                TargetsCsv.read(file.text(), planning.session().analysis().spec().scale()), "Import", file.name()));
    }

    /** Asks for a file, and writes the plan as a table. */
    void writePlan() {
        Optional<ListPlan> plan = planning.plan();
        if (plan.isEmpty()) {
            files().fail("Export Plan", "There is no plan to write yet; wait until the list is planned, or add targets.");
            return;
        }
        write("Export Plan", "plan", PlanCsv.of(plan.get().axis(), plan.get().request().stops(),
                plan.get().planned().legs()));
    }

    /** Asks for a file, and writes the targets as a table that can be read again. */
    void writeTargets() {
        write("Export Targets", "targets", texts.targets());
    }

    private void write(String title, String what, String text) {
        files().write(title, TextFiles.stackName(planning.session()) + "-" + what, text);
    }
}
