// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import pitchstack.core.stack.StageSpec;
import pitchstack.model.Stage;

/**
 * A stage as drawn.
 *
 * @param number from 1, the lowest
 * @param stage what the file says of it
 * @param spec the same in numbers
 * @param base its lower row
 * @param rider its upper row, at the index at which it is drawn
 * @param index that index: 0, or the one nearest to it that the stage can stand at
 */
record StageView(int number, Stage stage, StageSpec spec, RowView base, RowView rider, int index) {
    /** Its name, or its number where it has none. */
    String name() {
        return spec.name().isBlank() ? "Stage " + number : spec.name();
    }

    /** Whether both rows have equal teeth, as a section of one of them shows. */
    boolean isToothOf(StageView other) {
        return base.tooth().equals(other.base.tooth());
    }
}
