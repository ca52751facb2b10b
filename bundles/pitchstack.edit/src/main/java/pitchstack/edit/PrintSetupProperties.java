// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.Scale;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.PrintSetup;

/** The facts of a print set-up: printer, filament and position on the bed that rows were printed in. */
final class PrintSetupProperties {
    private static final String SETUP = "Print set-up";

    private PrintSetupProperties() {
    }

    static List<Property> of(PrintSetup setup) {
        Entries entries = new Entries(setup, "print set-up “" + setup.getName() + "”");
        Scale scale = Lengths.scale(setup);
        return List.of(
                entries.text(Literals.PRINT_SETUP__NAME, "name", "The word that its rows give as their print set-up.", SETUP),
                entries.text(Literals.PRINT_SETUP__DATE, "date", "When a part printed so was measured.", SETUP),
                entries.size(Literals.PRINT_SETUP__UNCERTAINTY, "length known to (1 σ)", "How well one measured length is known, "
                        + "as a standard uncertainty.", SETUP, scale, 0));
    }
}
