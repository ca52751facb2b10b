// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EAttribute;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Stage;
import pitchstack.model.ToothForm;

/**
 * Sets one fact of the tooth form of a stage, which gets one if it has none and the fact is not the usual one.
 *
 * @param stage the stage
 * @param feature a feature of a tooth form
 * @param value the new value, or {@code null} to clear it
 * @param label what the person did
 */
public record ShapeTeeth(Stage stage, EAttribute feature, Object value, String label) implements Edit {
    @Override
    public void apply() {
        ToothForm form = stage.getToothForm() != null ? stage.getToothForm() : PitchstackFactory.eINSTANCE.createToothForm();
        new SetValue(form, feature, value, label).apply();
        if (form.eIsSet(feature)) {
            stage.setToothForm(form);
        }
    }
}
