// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.List;
import java.util.stream.Stream;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.geometry.solid.RowSolid;

/** Rows for the tests: invented, of 1/4 in pitch, 6.35 mm, as drawn 6 350 000 000 000 fm. */
final class SampleRows {
    static final double PITCH_MM = 6.35;
    static final int TEETH = 41;
    static final double FACTOR_X = 1.0021;
    static final double FACTOR_Y = 0.9987;

    private SampleRows() {
    }

    /** A row with everything: leaning teeth, holes, numbers. */
    static RowSolid full(Side side) {
        return new RowSolid(part(side, TEETH, 1.5, Clamping.holes(5, 40), 5), FACTOR_X, FACTOR_Y);
    }

    /** A short one with straight teeth, for what takes long. */
    static RowSolid small() {
        return new RowSolid(part(Side.BASE, 4, 0, Clamping.holes(4, 15), 2), 1, 1);
    }

    /** One that gives way: tips rounded off, a slot in every tooth, deeper gaps, and clamped through slots. */
    static RowSolid soft(Side side) {
        ToothForm form = ToothForm.of(BasicRack.B, PITCH_MM).eased(0.1, 0.8, 0.5);
        return new RowSolid(part(side, form, TEETH, 0, Clamping.slots(4, 30), 10), FACTOR_X, FACTOR_Y);
    }

    private static RowPart part(Side side, int teeth, double lean, Clamping clamping, int every) {
        return part(side, ToothForm.of(BasicRack.B, PITCH_MM), teeth, lean, clamping, every);
    }

    private static RowPart part(Side side, ToothForm form, int teeth, double lean, Clamping clamping, int every) {
        RowShape shape = new RowShape(side, form, 6_350_000_000_000L, teeth, 14, lean);
        return new RowPart("Rack & “fine”, " + side.word() + " row", shape, 12, clamping, every, 0, 0.4);
    }

    static PartFile<RowSolid> file(RowSolid... rows) {
        return new PartFile<>("Bench <1>", Placed.behindEachOther(List.of(rows)), List.of("Invented."));
    }

    static PartFile<RowSolid> both() {
        return file(Stream.of(Side.values()).map(SampleRows::full).toArray(RowSolid[]::new));
    }
}
