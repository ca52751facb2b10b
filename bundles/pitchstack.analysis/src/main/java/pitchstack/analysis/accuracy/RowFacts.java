// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/**
 * A row of the model, with what reading it takes.
 *
 * @param positioner for its print set-ups
 * @param stage whose row it is
 * @param row the row
 * @param title how sentences name it
 * @param pitchM of the stage
 * @param rotary whether radians stand for metres
 * @param notes where assumptions go
 */
record RowFacts(Positioner positioner, Stage stage, Row row, String title, double pitchM, boolean rotary, Notes notes) {
    /** Whether it comes from a printer: it names a set-up, or its stage is printed; a grade says that it is bought. */
    boolean printed() {
        return text(row.getGrade()).isBlank()
                && (!text(row.getPrintSetup()).isBlank() || stage.getSource() == StageSource.PRINTED);
    }

    /** Whether what is said of its stage is said of this row too, as both are bought or both printed. */
    boolean asStage() {
        return printed() == (stage.getSource() == StageSource.PRINTED);
    }

    /** The toothed length, in radians on a rotary axis. */
    double lengthM() {
        return row.getTeeth() * pitchM;
    }

    static String text(String text) {
        return text == null ? "" : text;
    }
}
