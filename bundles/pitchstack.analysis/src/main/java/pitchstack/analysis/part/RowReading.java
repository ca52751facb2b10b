// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.part;

import java.util.List;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.solid.Remark;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.model.Stage;

/** What became of a row of the model. */
public sealed interface RowReading {
    /** The stage it belongs to. */
    Stage stage();

    /** Which of its rows. */
    Side side();

    /**
     * A row that can be made.
     *
     * @param part its sizes as drawn
     * @param reference whether it is bought, so that its shape is there to measure by and not to be made
     * @param scale by what its drawing is multiplied for its printer
     * @param remarks what is worth knowing before it is made
     */
    record Ready(Stage stage, Side side, RowPart part, boolean reference, BedScale scale, List<Remark> remarks)
            implements RowReading {
        /** Copies the list. */
        public Ready {
            remarks = List.copyOf(remarks);
        }

        /** The row as it lies on the bed. */
        public RowSolid solid() {
            return new RowSolid(part, scale.factorX(), scale.factorY());
        }
    }

    /**
     * A row that cannot be made.
     *
     * @param why one sentence with the number and what is allowed
     */
    record Refused(Stage stage, Side side, String why) implements RowReading { }
}
