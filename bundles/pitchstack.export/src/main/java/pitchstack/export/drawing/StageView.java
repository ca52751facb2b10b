// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import pitchstack.analysis.part.PartReader;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.stack.StageSpec;
import pitchstack.model.Stage;

/**
 * A stage as drawn.
 *
 * @param number from 1, the lowest
 * @param label by which the drawing points to it: its number, after that of its axis where several are drawn
 * @param stage what the file says of it
 * @param spec the same in numbers
 * @param base its lower row
 * @param rider its upper row, at the index at which it is drawn
 * @param index that index: 0, or the one nearest to it that the stage can stand at
 */
record StageView(int number, String label, Stage stage, StageSpec spec, RowView base, RowView rider, int index) {
    /** Its name, or its number where it has none. */
    String name() {
        return spec.name().isBlank() ? "Stage " + number : spec.name();
    }

    /** Its teeth as printed; those of a bought row have neither tip relief nor wells nor slots. */
    ToothForm tooth() {
        return PartReader.isPrinted(stage, Side.BASE) ? base.tooth() : rider.tooth();
    }
}
