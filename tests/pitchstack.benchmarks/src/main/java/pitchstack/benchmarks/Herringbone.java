// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.List;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.Clamping;
import pitchstack.core.geometry.RowShape;
import pitchstack.core.geometry.Side;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.geometry.solid.RowPart;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.export.part.PartFile;
import pitchstack.export.part.Placed;

/** Herringbone rows of 2.54 mm pitch, ISO 53 type A, 12 mm wide, leaning by 20°. */
final class Herringbone {
    static final double FACE_MM = 12;
    static final double LEAN_MM = FACE_MM / 2 * Math.tan(Math.toRadians(20));
    private static final double BODY_MM = 14;
    private static final long PITCH_FM = 2_540_000_000_000L;

    private Herringbone() { }

    static RowShape shape(int teeth) {
        return new RowShape(Side.BASE, ToothForm.of(BasicRack.A, 2.54), PITCH_FM, teeth, BODY_MM, LEAN_MM);
    }

    /** With holes every 40 mm, numbers on every tenth tooth and an arrow. */
    static RowSolid full(int teeth) {
        return new RowSolid(new RowPart("Full", shape(teeth), FACE_MM, Clamping.holes(5, 40), 10, 0, 0.4), 1.002, 0.999);
    }

    /** Teeth and body alone. A body as thin as two lines takes no arrow. */
    static RowSolid bare(int teeth) {
        RowShape shape = new RowShape(Side.BASE, ToothForm.of(BasicRack.A, 2.54), PITCH_FM, teeth, 1, LEAN_MM);
        return new RowSolid(new RowPart("Bare", shape, FACE_MM, Clamping.NONE, 0, 0, 0.4), 1, 1);
    }

    static PartFile<RowSolid> file(RowSolid row) {
        return new PartFile<>("Herringbone", Placed.behindEachOther(List.of(row)), List.of());
    }
}
