// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import pitchstack.analysis.Lengths;
import pitchstack.analysis.PrintedForms;
import pitchstack.analysis.Quantities;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.FormProblem;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.geometry.solid.Remark;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.geometry.solid.RowPlan;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.ToothPattern;

/**
 * Reads rows as parts. A row is printed where its stage is, or where it names a print set-up, as the adapter on a bought
 * rack does; any other is bought, and its shape is plain. What a file leaves open is filled in and said in a remark.
 */
public final class PartReader {
    /** Ten modules: advice of a handbook of a maker of gears (tandwiel.info). */
    private static final double FACE_MODULES = 10;
    /** Common practice, no source. */
    private static final double BODY_MODULES = 8;
    /** A screw M5 with play; ISO 273, from memory. */
    private static final double HOLE_MM = 5.5;
    private static final double SPACING_MM = 40;
    private static final double LINE_MM = 0.4;
    private static final double STEEPEST_DEG = 60;

    private final Positioner positioner;
    private final Lengths lengths;
    private final double lineMm;

    /** Reads rows of a positioner. */
    public PartReader(Positioner positioner) {
        this.positioner = positioner;
        lengths = new Lengths(new LinearScale(Quantities.unit(positioner)));
        lineMm = lineMm();
    }

    /** A line width that says nothing is found by the checks; parts then count with a usual one. */
    private double lineMm() {
        try {
            double line = new Lengths(new LinearScale(LengthUnit.MM)).mm("line width", positioner.getLineWidth(), LINE_MM);
            return line > 0 ? line : LINE_MM;
        } catch (QuantityException unreadable) {
            return LINE_MM;
        }
    }

    /** Whether a row is printed. */
    public static boolean isPrinted(Stage stage, Side side) {
        return PrintedForms.isPrinted(stage, row(stage, side));
    }

    private static Row row(Stage stage, Side side) {
        return side == Side.BASE ? stage.getBaseRow() : stage.getRiderRow();
    }

    /** Reads one row. */
    public RowReading read(Axis axis, Stage stage, Side side) {
        try {
            Scale scale = Quantities.scale(positioner, axis);
            Row row = row(stage, side);
            if (scale.turn() > 0) {
                return refused(stage, side, "its axis turns, and the file gives no radius to draw a ring by; parts are made"
                        + " of linear axes only.");
            }
            if (row == null || row.getTeeth() < 1) {
                return refused(stage, side, "it has no teeth; give it some.");
            }
            List<Remark> remarks = new ArrayList<>();
            boolean reference = !isPrinted(stage, side);
            BedScale bed = reference ? BedScale.NONE : bed(row, remarks);
            RowPart part = part(stage, side, Quantities.nominalPitch(stage, scale), remarks);
            Optional<String> problem = RowPlan.problem(part);
            if (problem.isPresent()) {
                return refused(stage, side, problem.get());
            }
            remarks.addAll(0, reference ? List.of() : RowPlan.of(part).remarks());
            return new RowReading.Ready(stage, side, part, reference, bed, remarks);
        } catch (QuantityException unreadable) {
            return refused(stage, side, unreadable.getMessage());
        }
    }

    /**
     * The sizes of a row of a linear axis before they are multiplied for a printer, with what is filled in.
     *
     * @throws QuantityException if the file gives a size that cannot be read, or holes for which the row has no room
     */
    public RowPart sizes(Axis axis, Stage stage, Side side) {
        RowPart part = part(stage, side, Quantities.nominalPitch(stage, Quantities.scale(positioner, axis)), new ArrayList<>());
        Optional<String> problem = part.clamping().isGiven() ? RowPlan.problem(part) : Optional.empty();
        problem.ifPresent(why -> {
            throw new QuantityException(why);
        });
        return part;
    }

    private static RowReading.Refused refused(Stage stage, Side side, String why) {
        return new RowReading.Refused(stage, side, "The " + side.word() + " row of stage “" + stage.getName()
                + "” cannot be made: " + why);
    }

    private BedScale bed(Row row, List<Remark> remarks) {
        String setup = Lengths.isBlank(row.getPrintSetup()) ? "" : row.getPrintSetup();
        BedScale bed = BedScale.of(positioner, setup);
        if (!bed.measuredX() || !bed.measuredY()) {
            String directions = bed.measuredX() ? "y" : bed.measuredY() ? "x" : "x and y";
            remarks.add(new Remark("not-measured", "No span along " + directions + " of the bed was measured on "
                    + (setup.isEmpty() ? "a print set-up of this row" : "print set-up “" + setup + "”")
                    + ", so the part is as drawn there; print and measure the coupon first."));
        }
        return bed;
    }

    private RowPart part(Stage stage, Side side, long pitchFm, List<Remark> remarks) {
        Row row = row(stage, side);
        boolean printed = isPrinted(stage, side);
        double pitchMm = pitchFm / 1e12;
        ToothForm form = PrintedForms.of(stage.getToothForm(), lengths, pitchMm, printed);
        FormProblem.of(form).ifPresent(problem -> {
            throw new QuantityException(problem);
        });
        double module = pitchMm / Math.PI;
        double face = taken("face width", row.getFaceWidth(), FACE_MODULES * module, remarks);
        double body = taken("body thickness", row.getBodyThickness(), BODY_MODULES * module, remarks);
        RowShape shape = new RowShape(side, form, pitchFm, row.getTeeth(), body, leanMm(stage, face));
        String name = stage.getName() + ", " + side.word() + " row" + (printed ? "" : " (bought: for reference only)");
        int first = side == Side.BASE ? -stage.getStart() : 0;
        return new RowPart(name, shape, face, printed ? clamping(row, remarks) : Clamping.NONE,
                printed ? row.getNumberEvery() : 0, first, lineMm);
    }

    private static double leanMm(Stage stage, double faceMm) {
        pitchstack.model.ToothForm form = stage.getToothForm();
        if (form == null || form.getPattern() != ToothPattern.HERRINGBONE) {
            return 0;
        }
        double angle = form.getHerringboneAngleDeg();
        if (!(angle > 0 && angle <= STEEPEST_DEG)) {
            throw new QuantityException("The herringbone angle is " + angle + "°; above 0° and up to 60° is allowed.");
        }
        return faceMm / 2 * Math.tan(Math.toRadians(angle));
    }

    private Clamping clamping(Row row, List<Remark> remarks) {
        return switch (row.getClamping()) {
            case NONE -> Clamping.NONE;
            case HOLES -> Clamping.holes(taken("diameter of the clamping holes", row.getClampDiameter(), HOLE_MM, remarks),
                    taken("spacing of the clamping holes", row.getClampSpacing(), SPACING_MM, remarks));
            case SLOTS -> Clamping.slots(taken("width of the clamping slots", row.getClampDiameter(), HOLE_MM, remarks),
                    taken("spacing of the clamping slots", row.getClampSpacing(), SPACING_MM, remarks));
        };
    }

    private double taken(String what, String text, double otherwise, List<Remark> remarks) {
        double value = lengths.mm(what, text, otherwise);
        if (!(value > 0)) {
            throw new QuantityException("The " + what + " is " + text.strip() + "; it must be above 0.");
        }
        if (Lengths.isBlank(text)) {
            remarks.add(new Remark("taken-" + what.replace(' ', '-'), "The file gives no " + what + "; "
                    + String.format(Locale.ROOT, "%.2f", value) + " mm is taken."));
        }
        return value;
    }
}
