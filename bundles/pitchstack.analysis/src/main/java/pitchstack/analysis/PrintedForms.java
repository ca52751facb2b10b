// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.model.Axis;
import pitchstack.model.AxisKind;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.model.ToothProfile;

/** The tooth forms of stages as they are made, in numbers. */
public final class PrintedForms {
    /** Depth and clearance of ISO 53 type A in modules, for an own form that leaves them open. */
    private static final double DEPTH = 2.25;
    private static final double CLEARANCE = 0.25;

    private PrintedForms() {
    }

    /**
     * Reads a form. A profile of ISO 53 gives angle, depth, relief and fillet; an own one takes them from the file, or, where
     * they are blank, 2.25 and 0.25 modules and the largest fillet that keeps clear of the other row's tips.
     *
     * @param form as in the file; null for ISO 53 type A
     * @param lengths reads lengths
     * @param pitchMm the pitch as drawn
     * @param eased whether to round off tips and cut wells and slots, which a bought row does not have
     * @throws QuantityException if a length cannot be read
     */
    public static ToothForm of(pitchstack.model.ToothForm form, Lengths lengths, double pitchMm, boolean eased) {
        if (form == null) {
            return ToothForm.of(BasicRack.A, pitchMm);
        }
        ToothForm plain = form.getProfile() == ToothProfile.OWN ? own(form, lengths, pitchMm)
                : ToothForm.of(rack(form.getProfile()), pitchMm);
        return !eased ? plain : plain.eased(lengths.mm("tip relief", form.getTipRelief(), 0),
                lengths.mm("well", form.getWell(), 0), lengths.mm("slot", form.getSlot(), 0));
    }

    /** Whether a row is printed: its stage is, or it names a print set-up, as the adapter on a bought rack does. */
    public static boolean isPrinted(Stage stage, Row row) {
        return stage.getSource() == StageSource.PRINTED || row != null && !Lengths.isBlank(row.getPrintSetup());
    }

    /**
     * The forms of the stages of a linear axis of which a row is printed, by stage index. One that cannot be read is left
     * out, since no part is made of it either.
     */
    static Map<Integer, ToothForm> of(Positioner positioner, Axis axis) {
        Map<Integer, ToothForm> forms = new TreeMap<>();
        for (int j = 0; j < axis.getStages().size() && axis.getKind() == AxisKind.LINEAR; j++) {
            Stage stage = axis.getStages().get(j);
            if (isPrinted(stage, stage.getBaseRow()) || isPrinted(stage, stage.getRiderRow())) {
                int number = j;
                read(positioner, stage).ifPresent(form -> forms.put(number, form));
            }
        }
        return forms;
    }

    private static Optional<ToothForm> read(Positioner positioner, Stage stage) {
        LinearScale scale = new LinearScale(Quantities.unit(positioner));
        try {
            return Optional.of(of(stage.getToothForm(), new Lengths(scale), Quantities.nominalPitch(stage, scale)
                    / Lengths.FM_PER_MM, true));
        } catch (QuantityException unreadable) {
            return Optional.empty();
        }
    }

    private static ToothForm own(pitchstack.model.ToothForm form, Lengths lengths, double pitchMm) {
        double module = pitchMm / Math.PI;
        double fillet = lengths.mm("root fillet", form.getRootFillet(), 0);
        ToothForm own = ToothForm.own(pitchMm, form.getFlankAngleDeg(), lengths.mm("depth", form.getDepth(), DEPTH * module),
                lengths.mm("root relief", form.getRootRelief(), CLEARANCE * module), fillet);
        return Lengths.isBlank(form.getRootFillet()) ? own.filleted() : own;
    }

    private static BasicRack rack(ToothProfile profile) {
        return switch (profile) {
            case ISO53_B -> BasicRack.B;
            case ISO53_C -> BasicRack.C;
            case ISO53_D -> BasicRack.D;
            default -> BasicRack.A;
        };
    }
}
