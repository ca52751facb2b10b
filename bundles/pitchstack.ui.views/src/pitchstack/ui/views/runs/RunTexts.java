// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Control;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.export.Cells;
import pitchstack.export.MeasuringPlanHtml;
import pitchstack.export.ReadingList;
import pitchstack.export.ReadingsCsv;
import pitchstack.export.RunEntries;
import pitchstack.model.Approach;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Reading;
import pitchstack.ui.views.TextFiles;

/** Readings as text: pasted, read from and written to files, and printed to be filled in. */
final class RunTexts {
    /** As many bad rows are named as fit a dialog; they come in kinds. */
    private static final int MOST_NAMED = 12;

    private final Control owner;
    private final Runs runs;
    private final ReadingEdits edits;

    /** @param owner whose shell dialogs open on */
    RunTexts(Control owner, Runs runs, ReadingEdits edits) {
        this.owner = owner;
        this.runs = runs;
        this.edits = edits;
    }

    private AxisSpec spec() {
        return runs.session().analysis().spec();
    }

    /**
     * Takes what is on the clipboard: a column of numbers goes into the readings that are there, from one on; a table is
     * added.
     *
     * @param from the reading that is chosen, if one is
     */
    void paste(Optional<Reading> from) {
        Clipboard clipboard = new Clipboard(owner.getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        if (!(text instanceof String typed) || typed.isBlank()) {
            return;
        }
        List<String> values = PastedReadings.column(typed, runs.scale());
        if (!values.isEmpty() && from.isPresent()) {
            int left = edits.fill(from.get(), values);
            if (left > 0) {
                warn("Paste Readings", "The run has no more readings below the chosen one; the last " + (left == 1
                        ? "number was" : left + " numbers were") + " not used.");
            }
            return;
        }
        add(PastedReadings.read(typed, spec()), "Paste", "what was copied");
    }

    /** Copies readings for a spreadsheet. */
    void copy(List<Reading> readings) {
        if (readings.isEmpty()) {
            return;
        }
        Clipboard clipboard = new Clipboard(owner.getDisplay());
        clipboard.setContents(new Object[] {Cells.tabs(rows(readings))}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    /** Asks for a file and adds its readings. */
    void read() {
        TextFiles.tables(owner.getShell()).read("Import Readings")
                .ifPresent(file -> add(ReadingsCsv.read(file.text(), spec()), "Import", file.name()));
    }

    /** Asks for a name and writes all readings of the run, also those to be filled in, as a table that can be read again. */
    void write() {
        runs.run().ifPresent(run -> TextFiles.tables(owner.getShell()).write("Export Readings",
                TextFiles.stackName(runs.session()) + "-readings", Cells.commas(rows(run.getReadings()))));
    }

    /** Asks for a name, writes a page with all settings of the run to fill in by hand, and opens it to be printed. */
    void print() {
        List<MeasuringPlan.Line> lines = runs.run().map(this::lines).orElse(List.of());
        if (lines.isEmpty()) {
            warn("Print a Measuring Plan", "There is nothing to print yet; Plan… says which settings to measure.");
            return;
        }
        String title = runs.session().positioner().getTitle();
        String page = MeasuringPlanHtml.of(title == null ? "" : title, spec(), lines);
        new TextFiles(owner.getShell(), "Web pages", ".html").write("Print a Measuring Plan",
                TextFiles.stackName(runs.session()) + "-plan", page).ifPresent(path -> Program.launch(path.toString()));
    }

    private List<MeasuringPlan.Line> lines(MeasurementRun run) {
        return run.getReadings().stream().filter(one -> one.getSetting().size() == spec().stages().size())
                .map(one -> new MeasuringPlan.Line(1, Setting.of(one.getSetting().stream().mapToInt(i -> i).toArray()),
                        one.getApproach() == Approach.DOWN ? Direction.BACK : Direction.FORWARD)).toList();
    }

    private List<List<String>> rows(List<Reading> readings) {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>();
        for (int j = 0; j < spec().stages().size(); j++) {
            header.add("Stage " + (j + 1));
        }
        header.addAll(List.of("direction", "position", "uncertainty"));
        rows.add(header);
        for (Reading reading : readings) {
            List<String> row = new ArrayList<>(reading.getSetting().stream().map(String::valueOf).toList());
            row.add(reading.getApproach() == Approach.UNKNOWN ? "" : reading.getApproach().getLiteral());
            row.add(reading.getValue() == null ? "" : reading.getValue());
            row.add(reading.getUncertainty() == null ? "" : reading.getUncertainty());
            rows.add(row);
        }
        return rows;
    }

    private void add(ReadingList list, String how, String source) {
        if (!list.readings().isEmpty()) {
            edits.add(RunEntries.of(list.readings()), how);
        }
        if (!list.bad().isEmpty() || list.readings().isEmpty()) {
            warn(how + " Readings", report(list, source));
        }
    }

    private static String report(ReadingList list, String source) {
        int good = list.readings().size();
        String kept = good == 0 ? "No reading was added: " : (good == 1 ? "1 reading was added" : good + " readings were added")
                + " as one change; ";
        int bad = list.bad().size();
        if (bad == 0) {
            return kept + "there is none in " + source + ".";
        }
        String lines = list.bad().stream().limit(MOST_NAMED).map(row -> "Line " + row.line() + ": " + row.sentence())
                .collect(Collectors.joining("\n"));
        return kept + (bad == 1 ? "1 row of " : bad + " rows of ") + source + " could not be read.\n\n" + lines
                + (bad > MOST_NAMED ? "\n… and " + (bad - MOST_NAMED) + " more." : "");
    }

    private void warn(String title, String sentence) {
        MessageDialog.openWarning(owner.getShell(), title, sentence);
    }
}
