// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.Quantities;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.export.drawing.AxisView.Travel;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.ToothForm;

/** Sets the rows of an axis one on the other, from what the file says. */
final class AxisViews {
    /** The profile of ISO 53, types A to C, in modules: the rest of the working depth, and the clearance below. */
    private static final double ADDENDUM = 1;
    private static final double CLEARANCE = 0.25;
    private static final double CLEARANCE_D = 0.4;
    private static final double FLANK_DEG = 20;
    /** How thick a part is drawn of which the file does not say it, in depths of its teeth. */
    private static final double THICKNESS = 2.5;

    private final Positioner positioner;
    private final AxisSpec spec;
    private final double mmPerCount;
    private boolean isThicknessStated = true;

    private AxisViews(Positioner positioner, AxisSpec spec) {
        this.positioner = positioner;
        this.spec = spec;
        mmPerCount = spec.scale().turn() == 0 ? 1.0 / LengthUnit.MM.femtometres() : 360.0 / spec.scale().turn();
    }

    /**
     * The axis as drawn.
     *
     * @param number from 1, in the order of the file
     * @param analysis of an axis without errors
     */
    static AxisView of(Positioner positioner, int number, AxisAnalysis analysis) {
        return new AxisViews(positioner, analysis.spec()).view(number, analysis.axis());
    }

    private AxisView view(int number, Axis axis) {
        List<StageView> stages = new ArrayList<>();
        double reference = 0;
        double bottom = 0;
        for (int j = 0; j < spec.stages().size(); j++) {
            StageView stage = stage(j, axis.getStages().get(j), reference, bottom);
            stages.add(stage);
            reference += stage.index() * stage.base().tooth().pitch();
            bottom = stage.rider().back();
        }
        Travel low = new Travel(spec.low().orElseGet(() -> spec.datum() + reach(false)), 0);
        Travel high = new Travel(spec.high().orElseGet(() -> spec.datum() + reach(true)), 0);
        return new AxisView(number, spec, stages, mmPerCount, at(low.count()), at(high.count()), isThicknessStated);
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
        ToothSize tooth = tooth(stage.getToothForm(), pitch);
        int index = numbers.rows().indices().clamp(0);
        double riderAtZero = reference - numbers.rows().rider().teeth() * pitch / 2;
        double baseThickness = thickness(stage.getBaseRow(), tooth);
        double pitchLine = bottom + baseThickness + tooth.dedendum();
        // A rider tooth stands in the gap to the right of its base tooth.
        RowView base = new RowView(riderAtZero - (numbers.rows().start() + 0.5) * pitch, pitchLine, 1,
                numbers.rows().base().teeth(), tooth, baseThickness);
        RowView rider = new RowView(riderAtZero + index * pitch, pitchLine, -1, numbers.rows().rider().teeth(), tooth,
                thickness(stage.getRiderRow(), tooth));
        return new StageView(j + 1, stage, numbers, base, rider, index);
    }

    private double thickness(Row row, ToothSize tooth) {
        double stated = mm(row.getBodyThickness());
        isThicknessStated &= stated > 0;
        return stated > 0 ? stated : tooth.depth() * THICKNESS;
    }

    private ToothSize tooth(ToothForm form, double pitch) {
        double module = pitch / Math.PI;
        double depth = form == null ? 0 : mm(form.getDepth());
        if (form == null || depth == 0 || spec.scale().turn() != 0) {
            return new ToothSize(pitch, form == null ? FLANK_DEG : form.getFlankAngleDeg(), ADDENDUM * module,
                    (ADDENDUM + CLEARANCE) * module);
        }
        double clearance = mm(form.getRootRelief());
        double addendum = (depth - clearance) / 2;
        return new ToothSize(pitch, form.getFlankAngleDeg(), addendum, addendum + clearance);
    }

    private double mm(String quantity) {
        return quantity == null || quantity.isBlank() ? 0
                : (double) new LinearScale(Quantities.unit(positioner)).parse(quantity) / LengthUnit.MM.femtometres();
    }
}
