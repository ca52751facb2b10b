// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EAttribute;
import pitchstack.model.Stage;

/**
 * Sets a correction, or its uncertainty, that was typed: it is then no longer that of the run it was fitted to.
 *
 * @param stage the stage
 * @param feature which of the two
 * @param ppm parts in a million
 * @param label what the person did
 */
public record TypeCorrection(Stage stage, EAttribute feature, double ppm, String label) implements Edit {
    @Override
    public void apply() {
        if (!stage.eGet(feature).equals(ppm)) {
            stage.eSet(feature, ppm);
            stage.setCorrectionRun(null);
        }
    }
}
