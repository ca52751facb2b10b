// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.accuracy.teeth.ToothPair;
import pitchstack.core.accuracy.total.Hold;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/**
 * Reads how the rows of a stage are held together.
 *
 * @param stage which
 * @param title how sentences name it
 * @param pitchM of the stage
 * @param base material of the base row
 * @param rider material of the rider row
 * @param notes where assumptions go
 */
record HoldReader(Stage stage, String title, double pitchM, Material base, Material rider, Notes notes) {
    /** The hold; nothing where no preload is given. */
    Optional<Hold> read() {
        OptionalDouble preload = notes.number(title + ": the preload", stage.getPreloadN());
        if (preload.isEmpty()) {
            notes.assume(title + ": no preload is given; every flank is taken to bear, and friction is left out.");
            return Optional.empty();
        }
        ToothForm form = form();
        double stiffness = pair(form).flankNPerM(ToothForms.variant(stage, title, form, notes));
        notes.assume(Materials.stiffness(base));
        notes.assume(Materials.stiffness(rider));
        notes.assume(String.format(Locale.ROOT, "%s: a pair of teeth gives way by bending, shear and its ground, %.0f"
                + " N/mm along the flank's normal for a force at the pitch line; creep, which softens plastics further,"
                + " is left out.", title,
                stiffness / 1e3));
        return Optional.of(new Hold(stiffness, form.flankAngleRad(), preload.getAsDouble(), friction()));
    }

    /** The tooth, as wide as both rows are. */
    ToothForm form() {
        double width = Math.min(width(stage.getBaseRow()), width(stage.getRiderRow()));
        return ToothForms.of(stage, title, pitchM, width, notes);
    }

    /** A tooth against its mate. The stage's slot and well are those of a printed tooth; a metal rack has neither. */
    ToothPair pair(ToothForm form) {
        return new ToothPair(form, new ToothPair.Part(base.elasticity(), base.plastic()),
                new ToothPair.Part(rider.elasticity(), rider.plastic()), true);
    }

    private double width(Row row) {
        OptionalDouble given = row == null ? OptionalDouble.empty()
                : notes.quantity(title + ": the face width", row.getFaceWidth(), Si::lengthM);
        if (given.orElse(0) > 0) {
            return given.getAsDouble();
        }
        double usual = Believed.FACE_WIDTH_MODULES * pitchM / Math.PI;
        notes.assume(String.format(Locale.ROOT, "%s: a row without a face width counts as ten modules wide, %.0f mm.",
                title, usual * 1e3));
        return usual;
    }

    /** Its coefficient, or what is usual. */
    double friction() {
        OptionalDouble given = notes.number(title + ": the friction", stage.getFriction());
        if (given.isPresent()) {
            return given.getAsDouble();
        }
        boolean plastic = base.plastic() || rider.plastic();
        double usual = plastic ? Believed.PLASTIC_FRICTION : Believed.METAL_FRICTION;
        notes.assume(title + ": no friction is given; " + usual + " is taken, "
                + (plastic ? "as measured of dry printed plastic." : "as of oiled metal, common practice without a"
                + " source."));
        return usual;
    }
}
