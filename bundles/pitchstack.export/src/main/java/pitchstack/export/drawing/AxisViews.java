// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.part.PartReader;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.QuantityException;
import pitchstack.export.drawing.AxisView.Travel;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** Sets the rows of an axis one on the other, from what the file says. */
final class AxisViews {
    /** How thick a ring is drawn, in depths of its teeth. */
    private static final double RING_THICKNESS = 2.5;
    /** The least of it, in degrees, so that it can be seen where a whole turn is drawn. */
    private static final double LEAST_RING = 7;

    private final Positioner positioner;
    private final Axis axis;
    private final int axisNumber;
    private final boolean several;
    private final AxisSpec spec;
    private final double mmPerCount;
    private boolean isThicknessStated = true;

    private AxisViews(Positioner positioner, Axis axis, int axisNumber, boolean several, AxisSpec spec) {
        this.positioner = positioner;
        this.axis = axis;
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
     * @throws QuantityException if the file gives a size that cannot be read or made
     */
    static AxisView of(Positioner positioner, int number, boolean several, AxisAnalysis analysis) {
        return new AxisViews(positioner, analysis.axis(), number, several, analysis.spec()).view();
    }

    private AxisView view() {
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
        Solid lower = solid(j, stage, Side.BASE, pitch);
        Solid upper = solid(j, stage, Side.RIDER, pitch);
        int index = numbers.rows().indices().clamp(0);
        double riderAtZero = reference - numbers.rows().rider().teeth() * pitch / 2;
        double pitchLine = bottom + lower.thickness - lower.tooth.floorMm();
        // A rider tooth stands in the gap to the right of its base tooth.
        RowView base = new RowView(riderAtZero - (numbers.rows().start() + 0.5) * pitch, pitchLine, 1,
                numbers.rows().base().teeth(), lower.tooth, lower.thickness, lower.holes);
        RowView rider = new RowView(riderAtZero + index * pitch, pitchLine, -1, numbers.rows().rider().teeth(), upper.tooth,
                upper.thickness, upper.holes);
        String label = several ? axisNumber + "." + (j + 1) : String.valueOf(j + 1);
        return new StageView(j + 1, label, stage, numbers, base, rider, index);
    }

    /** What of a row does not depend on where it stands. */
    private record Solid(ToothForm tooth, double thickness, RowHoles holes) { }

    /** The row as it is made as a part; the file gives no radius for the rings of a rotary axis, which are only shown. */
    private Solid solid(int j, Stage stage, Side side, double pitch) {
        if (spec.scale().turn() != 0) {
            ToothForm tooth = ToothForm.of(BasicRack.A, pitch);
            return new Solid(tooth, Math.max(tooth.depthMm() * RING_THICKNESS, LEAST_RING), RowHoles.NONE);
        }
        Row row = side == Side.BASE ? stage.getBaseRow() : stage.getRiderRow();
        isThicknessStated &= row.getBodyThickness() != null && !row.getBodyThickness().isBlank();
        try {
            RowPart part = new PartReader(positioner).sizes(axis, stage, side);
            return new Solid(part.shape().form(), part.shape().bodyMm(), RowHoles.of(part));
        } catch (QuantityException e) {
            String name = stage.getName() == null || stage.getName().isBlank() ? "Stage " + (j + 1) : stage.getName();
            throw new QuantityException("“" + name + "” cannot be drawn: " + e.getMessage());
        }
    }
}
