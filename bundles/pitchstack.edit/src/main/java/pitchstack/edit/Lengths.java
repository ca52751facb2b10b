// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import org.eclipse.emf.ecore.EObject;
import pitchstack.analysis.Quantities;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Scale;
import pitchstack.model.Positioner;

/** Lengths that are lengths on rotary axes too, such as the width of a face. */
final class Lengths {
    private Lengths() {
    }

    /** Reads and shows lengths in the unit of an element's document; in millimetres where it is in none. */
    static Scale scale(EObject element) {
        for (EObject at = element; at != null; at = at.eContainer()) {
            if (at instanceof Positioner positioner) {
                return new LinearScale(Quantities.unit(positioner));
            }
        }
        return new LinearScale(LengthUnit.MM);
    }
}
