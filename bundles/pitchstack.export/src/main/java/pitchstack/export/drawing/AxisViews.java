// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.Quantities;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.QuantityException;
import pitchstack.export.drawing.AxisView.Travel;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** Sets the rows of an axis one on the other, from what the file says. */
final class AxisViews {
    /** How thick a part is drawn of which the file does not say it, in depths of its teeth. */
    private static final double THICKNESS = 2.5;
    /** The same for rings, in degrees, so that they can be seen where a whole turn is drawn. */
    private static final double LEAST_ROTARY = 7;

    private final Positioner positioner;
    private final int axisNumber;
    private final boolean several;
    private final AxisSpec spec;
    private final double mmPerCount;
    private boolean isThicknessStated = true;

    private AxisViews(Positioner positioner, int axisNumber, boolean several, AxisSpec spec) {
        this.positioner = positioner;
        this.axisNumber = axisNumber;
        this.several = several;
        this.spec = spec;
        mmPerCount = spec.scale().turn() == 0 ? 1.0 / LengthUnit.MM.femtometres() : 360.0 / spec.scale().turn();
    }

    /**
     * The axis as drawn.
     *
     * @param number from 1, in the order of the file
     * @param several whether other axes are drawn on the same sheet
     * @param analysis of an axis without errors
     */
    static AxisView of(Positioner positioner, int number, boolean several, AxisAnalysis analysis) {
        return new AxisViews(positioner, number, several, analysis.spec()).view(analysis.axis());
    }

    private AxisView view(Axis axis) {
        List<StageView> stages = new ArrayList<>();
        double reference = 0;
        double bottom = 0;
        for (int j = 0; j < spec.stages().size(); j++) {
            StageView stage = stage(j, axis.getStages().get(j), reference, bottom);
            stages.add(stage);
            reference += stage.index() * stage.base().tooth().pitchMm();
            bottom = stage.rider().back();
        }
        return new AxisView(axisNumber, spec, stages, mmPerCount, at(spec.low().orElseGet(() -> spec.datum() + reach(false))),
                at(spec.high().orElseGet(() -> spec.datum() + reach(true))), isThicknessStated);
    }

    private Travel at(long position) {
        return new Travel(position, (position - spec.datum()) * mmPerCount);
    }

    /** How far the stages can stand from the datum together. */
    private long reach(boolean up) {
        return spec.stages().stream().mapToLong(stage -> {
            IndexRange indices = stage.rows().indices();
            return stage.nominalPitch() * (up ? indices.last() : indices.first());
        }).sum();
    }

    private StageView stage(int j, Stage stage, double reference, double bottom) {
        StageSpec numbers = spec.stages().get(j);
        double pitch = numbers.nominalPitch() * mmPerCount;
        ToothForm tooth = tooth(stage.getToothForm(), pitch);
        int index = numbers.rows().indices().clamp(0);
        double riderAtZero = reference - numbers.rows().rider().teeth() * pitch / 2;
        double baseThickness = thickness(stage.getBaseRow(), tooth);
        double pitchLine = bottom + baseThickness - tooth.floorMm();
        // A rider tooth stands in the gap to the right of its base tooth.
        RowView base = new RowView(riderAtZero - (numbers.rows().start() + 0.5) * pitch, pitchLine, 1,
                numbers.rows().base().teeth(), tooth, baseThickness);
        RowView rider = new RowView(riderAtZero + index * pitch, pitchLine, -1, numbers.rows().rider().teeth(), tooth,
                thickness(stage.getRiderRow(), tooth));
        String label = several ? axisNumber + "." + (j + 1) : String.valueOf(j + 1);
        return new StageView(j + 1, label, stage, numbers, base, rider, index);
    }

    private double thickness(Row row, ToothForm tooth) {
        double stated = mm("body thickness", row.getBodyThickness());
        isThicknessStated &= stated > 0;
        return stated > 0 ? stated : Math.max(tooth.depthMm() * THICKNESS, spec.scale().turn() == 0 ? 0 : LEAST_ROTARY);
    }

    private ToothForm tooth(pitchstack.model.ToothForm form, double pitch) {
        if (form == null || spec.scale().turn() != 0) {
            return ToothForm.of(BasicRack.A, pitch);
        }
        return profile(form, pitch).eased(mm("tip relief", form.getTipRelief()), mm("well", form.getWell()),
                mm("slot", form.getSlot()));
    }

    private ToothForm profile(pitchstack.model.ToothForm form, double pitch) {
        return switch (form.getProfile()) {
            case ISO53_A -> ToothForm.of(BasicRack.A, pitch);
            case ISO53_B -> ToothForm.of(BasicRack.B, pitch);
            case ISO53_C -> ToothForm.of(BasicRack.C, pitch);
            case ISO53_D -> ToothForm.of(BasicRack.D, pitch);
            case OWN -> own(form, pitch);
        };
    }

    private ToothForm own(pitchstack.model.ToothForm form, double pitch) {
        double depth = mm("tooth depth", form.getDepth());
        return depth == 0 ? ToothForm.of(BasicRack.A, pitch) : ToothForm.own(pitch, form.getFlankAngleDeg(), depth,
                mm("root relief", form.getRootRelief()), mm("root fillet", form.getRootFillet()));
    }

    private double mm(String what, String quantity) {
        if (quantity == null || quantity.isBlank()) {
            return 0;
        }
        try {
            return (double) new LinearScale(Quantities.unit(positioner)).parse(quantity) / LengthUnit.MM.femtometres();
        } catch (QuantityException e) {
            throw new QuantityException("The " + what + " of a row on axis “" + spec.name() + "” cannot be read: "
                    + e.getMessage());
        }
    }
}
