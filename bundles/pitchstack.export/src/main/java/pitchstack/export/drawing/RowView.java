// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import pitchstack.core.geometry.ToothForm;

/**
 * A row and the solid part behind its teeth as drawn, in millimetres of the part.
 *
 * @param left where it begins, half a gap before its first tooth
 * @param pitchLine the y of its pitch line
 * @param up 1 for a base row, whose teeth stand up, −1 for a rider row
 * @param teeth how many teeth
 * @param tooth what they look like
 * @param thickness of the solid part behind the teeth
 * @param holes by which it is clamped
 */
record RowView(double left, double pitchLine, int up, int teeth, ToothForm tooth, double thickness, RowHoles holes) {
    /** A row without holes. */
    RowView(double left, double pitchLine, int up, int teeth, ToothForm tooth, double thickness) {
        this(left, pitchLine, up, teeth, tooth, thickness, RowHoles.NONE);
    }

    /** Where it ends, half a gap behind its last tooth. */
    double right() {
        return left + teeth * tooth.pitchMm();
    }

    /** The middle of a tooth. */
    double centre(int number) {
        return left + (number + 0.5) * tooth.pitchMm();
    }

    /** The left flank of a tooth at the pitch line. */
    double flank(int number) {
        return left + (number + 0.25) * tooth.pitchMm();
    }

    /** The y of the floor of the gaps. */
    double root() {
        return pitchLine + up * tooth.floorMm();
    }

    /** The y of the tips. */
    double tip() {
        return pitchLine + up * tooth.addendumMm();
    }

    /** The y of the face away from the teeth. */
    double back() {
        return root() - up * thickness;
    }

    /** The tooth in whose cell a place is, be there such a tooth or not. */
    int toothAt(double x) {
        return (int) Math.floor((x - left) / tooth.pitchMm());
    }

    /** The same row without slots and wells, which are for its own section to show. */
    RowView plain() {
        return new RowView(left, pitchLine, up, teeth, tooth.eased(0, 0, 0), thickness + tooth.wellMm());
    }

    /** The same row elsewhere. */
    RowView moved(double right) {
        return new RowView(left + right, pitchLine, up, teeth, tooth, thickness, holes);
    }
}
