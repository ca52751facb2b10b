// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import pitchstack.analysis.accuracy.Grade;
import pitchstack.core.accuracy.rack.RackEdition;
import pitchstack.core.units.Scale;
import pitchstack.edit.Property.Entry;
import pitchstack.model.Clamping;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** The facts of the teeth on one face and of the body that carries them. */
final class RowProperties {
    private static final String TEETH = "Teeth";
    private static final String BODY = "Body";
    private static final String ACCURACY = "Accuracy";
    /** A row whose length is off by more than a hundredth is known to be wrong. */
    private static final double MOST_PPM = 10_000;
    private static final int MOST_TEETH_A_NUMBER = 1000;

    private RowProperties() {
    }

    static List<Property> of(Row row) {
        boolean base = row.eContainmentFeature() == Literals.STAGE__BASE_ROW;
        Entries entries = new Entries(row, (base ? "the base row of “" : "the rider row of “")
                + ((Stage) row.eContainer()).getName() + "”");
        Scale scale = Lengths.scale(row);
        return List.of(
                entries.integer(Literals.ROW__TEETH, "teeth", "How many teeth the row has.", TEETH, 1, Properties.MOST_TEETH),
                entries.text(Literals.ROW__PRINT_SETUP, "print set-up",
                        "Rows printed together, in one direction, share their errors; give them the same word here.", TEETH),
                entries.integer(Literals.ROW__NUMBER_EVERY, "number every (teeth)",
                        "After how many teeth a number stands on the part; 0 for no numbers.", TEETH, 0, MOST_TEETH_A_NUMBER),
                entries.text(Literals.ROW__MATERIAL, "material", "What this row is made of, where it is another material than "
                        + "that of the stage: " + Materials.USUAL, ACCURACY),
                grade(entries),
                entries.decimal(Literals.ROW__SCALE_UNCERTAINTY_PPM, "length known to (ppm, 1 σ)",
                        "How well the length of the row is known before it is measured, as a standard uncertainty: 100 ppm is "
                                + "0.02 mm in 200 mm. 0 where it is not known.", ACCURACY, 0, MOST_PPM),
                entries.size(Literals.ROW__FACE_WIDTH, "face width", "How wide the teeth are, across the travel.", BODY, scale,
                        0),
                entries.size(Literals.ROW__BODY_THICKNESS, "body thickness", "From the roots of the teeth to the back of the "
                        + "body.", BODY, scale, 0),
                entries.choice(Literals.ROW__CLAMPING, "clamping", "How the body is held down: through holes, slots, or by "
                        + "neither.", BODY, Clamping.VALUES),
                entries.size(Literals.ROW__CLAMP_DIAMETER, "clamp hole", "Diameter of the holes, or width of the slots.", BODY,
                        scale, 0),
                entries.size(Literals.ROW__CLAMP_SPACING, "clamp spacing", "From one hole or slot to the next.", BODY, scale,
                        0));
    }

    /** The grade as free text of a fixed shape; anything else would be silently left out of the budget. */
    private static Property grade(Entries entries) {
        Property text = entries.text(Literals.ROW__GRADE, "rack grade", "The grade that a bought rack is sold by, such as "
                + "ISO 1328-1:2013 class 8; empty if it has none. A measurement counts for more.", ACCURACY);
        return new Property(text.id(), text.label(), text.tooltip(), text.group(), text.text(), text.choices(),
                Optional.of(typed -> typed.isBlank() ? text.enter(typed)
                        : Grade.parse(typed).filter(RowProperties::exists).map(grade -> text.enter(grade.toString()))
                                .orElseGet(() -> new Entry.Refused("“" + typed.strip() + "” is not a rack grade; give "
                                        + "ISO 1328-1:2013 class 1 to 11 or ISO 1328-1:1995 grade 0 to 12."))));
    }

    private static boolean exists(Grade grade) {
        return grade.edition() == RackEdition.ISO_1995 ? grade.number() <= 12 : 1 <= grade.number() && grade.number() <= 11;
    }
}
