// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Shell;
import pitchstack.core.units.Scale;
import pitchstack.export.Cells;
import pitchstack.export.TargetList;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Target;
import pitchstack.ui.views.QuantityText;

/** The list as text: copied for spreadsheets, and pasted from them. */
final class ListTexts {
    private static final List<Column> COPIED = List.of(Column.NAME, Column.POSITION, Column.TOLERANCE, Column.NOTE,
            Column.REACHED, Column.ERROR, Column.EFFORT, Column.WORN, Column.SETTING);
    /** As many bad rows are named as fit a dialog; they come in kinds. */
    private static final int MOST_NAMED = 12;

    private final ListPlanning planning;
    private final ListEdits edits;

    ListTexts(ListPlanning planning, ListEdits edits) {
        this.planning = planning;
        this.edits = edits;
    }

    private Shell shell() {
        return planning.page().control().getShell();
    }

    /** Puts the selected rows with their answers onto the clipboard. */
    void copy() {
        List<Target> selected = planning.page().table().selected();
        List<List<String>> rows = new ArrayList<>();
        rows.add(COPIED.stream().map(column -> column.title().toLowerCase(Locale.ROOT)).toList());
        List<Listing.Entry> entries = planning.listing().entries();
        for (int i = 0; i < entries.size(); i++) {
            if (selected.contains(entries.get(i).target())) {
                String[] texts = RowText.of(i + 1, entries.get(i), planning.plan().orElse(null), false);
                rows.add(COPIED.stream().map(column -> plain(texts[column.ordinal()])).toList());
            }
        }
        Clipboard clipboard = new Clipboard(shell().getDisplay());
        clipboard.setContents(new Object[] {Cells.tabs(rows)}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
    }

    /** Spreadsheets read a hyphen as a minus, and the minus of print as a letter. */
    private static String plain(String text) {
        return text.replace('−', '-');
    }

    /** Adds what is on the clipboard. */
    void paste() {
        Clipboard clipboard = new Clipboard(shell().getDisplay());
        Object text = clipboard.getContents(TextTransfer.getInstance());
        clipboard.dispose();
        if (text instanceof String typed && !typed.isBlank()) {
            add(PastedTargets.read(typed, scale()), "Paste", "what was copied");
        }
    }

    private Scale scale() {
        return planning.session().analysis().spec().scale();
    }

    /** Adds the rows of a table that could be read, as one change, and names those that could not. */
    void add(TargetList list, String how, String source) {
        List<Target> targets = list.targets().stream().map(this::target).toList();
        if (!targets.isEmpty()) {
            edits.add(targets, how + (targets.size() == 1 ? " 1 target" : " " + targets.size() + " targets"));
        }
        if (!list.bad().isEmpty() || targets.isEmpty()) {
            MessageDialog.openWarning(shell(), how + " Targets", report(list, source));
        }
    }

    private static String report(TargetList list, String source) {
        int good = list.targets().size();
        String kept = good == 0 ? "No target was added: " : (good == 1 ? "1 target was added" : good + " targets were added")
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

    private Target target(TargetList.Row row) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName(row.name().isEmpty() ? null : row.name());
        target.setPosition(QuantityText.of(row.position(), scale()));
        row.tolerance().ifPresent(tolerance -> target.setTolerance(QuantityText.of(tolerance, scale())));
        target.setNote(row.note().isEmpty() ? null : row.note());
        return target;
    }

    /** The targets themselves as a table that can be read again. */
    String targets() {
        List<List<String>> rows = new ArrayList<>(List.of(List.of("name", "position", "tolerance", "note")));
        planning.session().axis().getTargets().forEach(target -> rows.add(Arrays.asList(Listing.text(target.getName()),
                Listing.text(target.getPosition()), Listing.text(target.getTolerance()), Listing.text(target.getNote()))));
        return Cells.commas(rows);
    }
}
