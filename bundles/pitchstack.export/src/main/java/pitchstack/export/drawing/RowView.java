// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/**
 * A row and the solid part behind its teeth as drawn, in millimetres of the part.
 *
 * @param left where it begins, half a gap before its first tooth
 * @param pitchLine the y of its pitch line
 * @param up 1 for a base row, whose teeth stand up, −1 for a rider row
 * @param teeth how many teeth
 * @param tooth what they look like
 * @param thickness of the solid part behind the teeth
 */
record RowView(double left, double pitchLine, int up, int teeth, ToothSize tooth, double thickness) {
    /** Where it ends, half a gap behind its last tooth. */
    double right() {
        return left + teeth * tooth.pitch();
    }

    /** The middle of a tooth. */
    double centre(int number) {
        return left + (number + 0.5) * tooth.pitch();
    }

    /** The left flank of a tooth at the pitch line. */
    double flank(int number) {
        return left + (number + 0.25) * tooth.pitch();
    }

    /** The y of the roots. */
    double root() {
        return pitchLine - up * tooth.dedendum();
    }

    /** The y of the tips. */
    double tip() {
        return pitchLine + up * tooth.addendum();
    }

    /** The y of the face away from the teeth. */
    double back() {
        return root() - up * thickness;
    }

    /** The tooth in whose cell a place is, be there such a tooth or not. */
    int toothAt(double x) {
        return (int) Math.floor((x - left) / tooth.pitch());
    }

    /** The same row elsewhere. */
    RowView moved(double right) {
        return new RowView(left + right, pitchLine, up, teeth, tooth, thickness);
    }
}
