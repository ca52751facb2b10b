// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

/**
 * The drawn outline of teeth: straight flanks, and tooth as wide as gap at half depth, so that two rows mesh. Flanks
 * stand at 20° where the row is drawn to its true depth; where teeth are narrow the depth is drawn larger than it is and
 * the flanks keep their width.
 *
 * @param pitchPx the width of a cell
 * @param depthPx the drawn depth, above 0
 */
public record ToothShape(double pitchPx, double depthPx) {
    /** tan 20°, the usual flank angle of a rack (ISO 53). */
    private static final double FLANK = Math.tan(Math.toRadians(20));
    /** Working depth over pitch: two modules over π modules (ISO 53). */
    private static final double DEPTH_OF_PITCH = 2 / Math.PI;

    /** How far a flank runs sideways from root to tip. */
    public double flankRun() {
        return FLANK * Math.min(depthPx, DEPTH_OF_PITCH * pitchPx);
    }

    /**
     * The corners of one tooth along the row, from the left end of its cell: root, tip, tip, root.
     *
     * @param base whether it is a base tooth, which takes the left half of its cell
     */
    public double[] corners(boolean base) {
        double middle = pitchPx * (base ? 0.25 : 0.75);
        double root = pitchPx / 4 + flankRun() / 2;
        double tip = pitchPx / 4 - flankRun() / 2;
        return new double[] {middle - root, middle - tip, middle + tip, middle + root};
    }
}
