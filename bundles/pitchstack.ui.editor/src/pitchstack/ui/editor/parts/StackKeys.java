// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.gef.KeyHandler;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.edit.MoveStage;
import pitchstack.edit.ResizeRow;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.ui.editor.places.StageTravel;

/**
 * The keys of the drawing. Left and right move the selected stage by a tooth, with Shift or Ctrl by ten; up and down
 * select the next stage, R its rows, M the marks of the ruler, which left and right move then; plus and minus lengthen and
 * shorten the selected row; Ctrl+Home and Ctrl+End move a stage to its first and last index. Home, End and the page keys
 * scroll.
 */
final class StackKeys extends KeyHandler {
    private static final int MANY = 10;
    private static final double PAGE = 0.8;
    private static final double ALL = 1e6;

    private final StackViewer viewer;
    private final MarkKeys marks;

    StackKeys(StackViewer viewer) {
        this.viewer = viewer;
        marks = new MarkKeys(viewer);
    }

    @Override
    public boolean keyPressed(KeyEvent event) {
        boolean command = (event.stateMask & SWT.MOD1) != 0;
        boolean ten = command || (event.stateMask & SWT.SHIFT) != 0;
        switch (event.keyCode) {
            case SWT.ARROW_LEFT -> step(event, ten ? -MANY : -1);
            case SWT.ARROW_RIGHT -> step(event, ten ? MANY : 1);
            case SWT.ARROW_UP -> select(1);
            case SWT.ARROW_DOWN -> select(-1);
            case SWT.HOME -> end(command, -1);
            case SWT.END -> end(command, 1);
            case SWT.PAGE_UP -> viewer.view().scrollBy(-PAGE);
            case SWT.PAGE_DOWN -> viewer.view().scrollBy(PAGE);
            default -> {
                return typed(event) || select(event.character) || super.keyPressed(event);
            }
        }
        return true;
    }

    /** Plus and minus lengthen and shorten the selected row, at its end or, with Alt, at tooth 0. */
    private boolean typed(KeyEvent event) {
        int teeth = event.character == '+' ? 1 : event.character == '-' ? -1 : 0;
        Optional<Row> row = viewer.selectedElement().filter(Row.class::isInstance).map(Row.class::cast);
        if (teeth == 0 || row.isEmpty() || (event.stateMask & SWT.MOD1) != 0
                || ResizeRow.allowed(row.get(), teeth) != teeth) {
            return false;
        }
        boolean start = (event.stateMask & SWT.MOD3) != 0;
        viewer.view().session().run(new ResizeRow(row.get(), start ? teeth : 0, start ? 0 : teeth));
        return true;
    }

    /** M selects the next mark of the ruler, with Shift the one before; R the next row or worn range of the stage. */
    private boolean select(char key) {
        switch (key) {
            case 'm' -> marks.select(1);
            case 'M' -> marks.select(-1);
            case 'r', 'R' -> selectRow();
            default -> {
                return false;
            }
        }
        return true;
    }

    private void selectRow() {
        stage().ifPresent(stage -> {
            List<EObject> parts = new ArrayList<>();
            Stream.of(stage.getRiderRow(), stage.getBaseRow()).filter(Objects::nonNull).forEach(row -> {
                parts.add(row);
                parts.addAll(row.getWorn());
            });
            if (parts.isEmpty()) {
                return;
            }
            int at = viewer.selectedElement().map(parts::indexOf).orElse(-1);
            viewer.selectElement(parts.get((at + 1) % parts.size()));
        });
    }

    private Optional<Stage> stage() {
        return viewer.selectedElement().flatMap(Elements::stage);
    }

    private void step(KeyEvent event, int steps) {
        if (!marks.nudge(steps, (event.stateMask & SWT.MOD3) != 0)) {
            step(steps);
        }
    }

    private void step(int teeth) {
        stage().ifPresent(stage -> move(stage, stage.getIndex() + teeth));
    }

    private void end(boolean ofStage, int side) {
        if (!ofStage) {
            viewer.view().scrollBy(side * ALL);
            return;
        }
        stage().ifPresent(stage -> {
            IndexRange range = rows(stage).indices();
            move(stage, side < 0 ? range.first() : range.last());
        });
    }

    private void move(Stage stage, int wanted) {
        int index = new StageTravel(rows(stage)).settle(stage.getIndex(), wanted);
        if (index != stage.getIndex()) {
            viewer.view().session().run(new MoveStage(stage, index));
        }
        viewer.selectedElement().ifPresent(viewer::selectElement);
    }

    private RowPair rows(Stage stage) {
        return viewer.view().session().analysis().spec().stages().get(Elements.number(stage)).rows();
    }

    private void select(int up) {
        Axis axis = viewer.view().session().axis();
        int count = axis.getStages().size();
        int from = stage().map(Elements::number).orElse(up > 0 ? -1 : count);
        int to = Math.max(0, Math.min(count - 1, from + up));
        if (count > 0) {
            viewer.selectElement(axis.getStages().get(to));
        }
    }
}
