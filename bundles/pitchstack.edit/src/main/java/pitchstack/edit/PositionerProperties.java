// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.model.DisplayUnit;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;

/** The facts of a whole device. */
final class PositionerProperties {
    private static final String TITLE = "Title block";
    private static final String SHOP = "Shop";
    private static final String ACCURACY = "Accuracy";
    /** More than between a winter and a summer without heating. */
    private static final double MOST_SWING_K = 40;

    private PositionerProperties() {
    }

    static List<Property> of(Positioner positioner) {
        Entries entries = new Entries(positioner, "the positioner");
        return List.of(
                entries.text(Literals.POSITIONER__TITLE, "title", "What this device is called on drawings and cards.", TITLE),
                entries.choice(Literals.POSITIONER__UNIT, "unit",
                        "The unit in which lengths are shown, and meant where none is typed.", SHOP, DisplayUnit.VALUES),
                entries.decimal(Literals.POSITIONER__TEMPERATURE_C, "temperature (°C)",
                        "Today's temperature of the device; lengths are drawn for 20 °C.", SHOP, -40, 120),
                entries.decimal(Literals.POSITIONER__TEMPERATURE_HALF_WIDTH_K, "temperature swing (± K)",
                        "By how much the temperature may be off or swing; any value within is as likely.", SHOP, 0,
                        MOST_SWING_K),
                entries.quantity(Literals.POSITIONER__LINE_WIDTH, "printed line width",
                        "The width of one line of the printer, to tell which teeth are too small to print.", SHOP, false,
                        Properties.above(new LinearScale(LengthUnit.MM), "A printed line width", 0)),
                entries.decimal(Literals.POSITIONER__SHARED_SCALE, "shared print scale",
                        "How much of their error in length rows of the same print set-up share: 0 none of it, 1 all. What "
                                + "they share cancels where one goes forward and the other back.", ACCURACY, 0, 1),
                entries.text(Literals.POSITIONER__WORK_MATERIAL, "work material",
                        "What the work is made of, for its growth by warmth: " + Materials.USUAL, ACCURACY));
    }
}
