// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.viewers.ArrayContentProvider;
import org.eclipse.jface.viewers.CellEditor;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ComboBoxCellEditor;
import org.eclipse.jface.viewers.EditingSupport;
import org.eclipse.jface.viewers.TableViewer;
import org.eclipse.jface.viewers.TableViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import pitchstack.analysis.Quantities;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.edit.Session;
import pitchstack.edit.TypedText;
import pitchstack.model.BedDirection;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PrintSetup;
import pitchstack.model.Span;
import pitchstack.ui.views.Accessibles;
import pitchstack.ui.views.CellEditing;
import pitchstack.ui.views.Columns;
import pitchstack.ui.views.Flow;
import pitchstack.ui.views.InsistentCell;

/** The lengths measured on a printed part, edited in place; the last row takes a new one. */
final class SpanTable {
    private static final String[] TITLES = {"Along", "Drawn\t", "Measured\t"};
    private static final int ROWS = 3;

    private final Composite pane;
    private final TableViewer viewer;
    private final Columns columns;
    private final Consumer<List<Span>> measured;
    private final Consumer<String> problem;
    private List<Span> spans = List.of();
    private Scale scale = new LinearScale(LengthUnit.MM);

    /**
     * @param measured takes all lengths after a change
     * @param problem told why something typed cannot be taken, or nothing
     */
    SpanTable(Composite parent, Consumer<List<Span>> measured, Consumer<String> problem) {
        this.measured = measured;
        this.problem = problem;
        pane = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(4, 2).applyTo(pane);
        Table table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Accessibles.name(table, "Lengths measured on the print");
        table.setToolTipText("From a flank to another of the same hand, over as long a span as the part has. F2 or Enter edits a"
                + " cell; Insert adds, Delete takes out.");
        columns = new Columns(table, 0, TITLES);
        GridDataFactory.fillDefaults().grab(true, true).hint(60, Columns.height(table, ROWS)).applyTo(table);
        viewer = new TableViewer(table);
        viewer.setContentProvider(ArrayContentProvider.getInstance());
        for (int i = 0; i < TITLES.length; i++) {
            int at = i;
            TableViewerColumn column = new TableViewerColumn(viewer, table.getColumn(i));
            column.setLabelProvider(ColumnLabelProvider.createTextProvider(element -> text((Span) element, at)));
            column.setEditingSupport(new Cell(at));
        }
        CellEditing.in(viewer);
        table.addListener(SWT.KeyDown, this::key);
        Composite line = Flow.in(pane, 1, 4, false);
        button(line, "Add &Length", "Adds a length, to be changed in the table (Insert)", this::add);
        button(line, "Delete Length", "Takes the chosen length out (Delete)", this::delete);
    }

    private static void button(Composite line, String text, String tooltip, Runnable action) {
        Button button = new Button(line, SWT.PUSH);
        button.setText(text);
        button.setToolTipText(tooltip);
        button.addListener(SWT.Selection, e -> action.run());
    }

    Composite control() {
        return pane;
    }

    private void key(Event e) {
        int modifiers = e.stateMask & SWT.MODIFIER_MASK;
        if (e.keyCode == SWT.INSERT && modifiers == 0) {
            add();
        } else if (e.keyCode == SWT.DEL && modifiers == 0) {
            delete();
        }
    }

    void setFocus() {
        viewer.getTable().setFocus();
    }

    /** Shows the lengths of a set-up; none for {@code null}. */
    void show(PrintSetup setup, Session session) {
        scale = new LinearScale(Quantities.unit(session.positioner()));
        List<Span> now = setup == null ? List.of() : List.copyOf(setup.getSpans());
        pane.setVisible(setup != null);
        if (!now.equals(spans)) {
            viewer.cancelEditing();
            int chosen = viewer.getTable().getSelectionIndex();
            spans = now;
            viewer.setInput(spans);
            viewer.getTable().select(Math.min(chosen, spans.size() - 1));
        }
        columns.fit();
    }

    private static String text(Span span, int column) {
        String text = switch (column) {
            case 0 -> span.getDirection().getLiteral();
            case 1 -> span.getDrawn();
            default -> span.getMeasured();
        };
        return text == null ? "" : text;
    }

    private void add() {
        Span span = PitchstackFactory.eINSTANCE.createSpan();
        Scale usual = scale;
        span.setDrawn(TypedText.withUnit("100", usual));
        span.setMeasured(TypedText.withUnit("100", usual));
        List<Span> all = new ArrayList<>(spans);
        all.add(span);
        measured.accept(all);
        pane.getDisplay().asyncExec(() -> {
            if (!pane.isDisposed() && !spans.isEmpty()) {
                setFocus();
                viewer.editElement(spans.get(spans.size() - 1), 1);
            }
        });
    }

    private void delete() {
        int at = viewer.getTable().getSelectionIndex();
        if (at >= 0 && at < spans.size()) {
            List<Span> all = new ArrayList<>(spans);
            all.remove(at);
            measured.accept(all);
        }
    }

    private Optional<String> refusal(String typed) {
        try {
            return scale.parse(typed) > 0 ? Optional.empty()
                    : Optional.of("A length of " + typed.strip() + " is not allowed; it must be above 0.");
        } catch (QuantityException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void change(Span of, Consumer<Span> to) {
        List<Span> all = new ArrayList<>(EcoreUtil.copyAll(spans));
        to.accept(all.get(spans.indexOf(of)));
        measured.accept(all);
    }

    /** Lets one column be edited in place. */
    private final class Cell extends EditingSupport {
        private final int column;
        private final InsistentCell typed;
        private final ComboBoxCellEditor chosen;

        Cell(int column) {
            super(viewer);
            this.column = column;
            typed = new InsistentCell(viewer.getTable(), problem);
            chosen = new ComboBoxCellEditor(viewer.getTable(), BedDirection.VALUES.stream().map(BedDirection::getLiteral)
                    .toArray(String[]::new), SWT.READ_ONLY);
        }

        @Override
        protected boolean canEdit(Object element) {
            return true;
        }

        @Override
        protected CellEditor getCellEditor(Object element) {
            typed.refuse(SpanTable.this::refusal);
            return column == 0 ? chosen : typed;
        }

        @Override
        protected Object getValue(Object element) {
            Span span = (Span) element;
            return column == 0 ? Integer.valueOf(BedDirection.VALUES.indexOf(span.getDirection())) : text(span, column);
        }

        @Override
        protected void setValue(Object element, Object value) {
            Span span = (Span) element;
            if (value instanceof Integer choice && choice >= 0) {
                change(span, one -> one.setDirection(BedDirection.VALUES.get(choice)));
            } else if (value instanceof String text && !text.equals(text(span, column)) && refusal(text).isEmpty()) {
                String kept = TypedText.withUnit(text, scale);
                change(span, one -> {
                    if (column == 1) {
                        one.setDrawn(kept);
                    } else {
                        one.setMeasured(kept);
                    }
                });
            }
        }
    }
}
