// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/** Which point of a line of text its place is, along the line. */
public enum Anchor {
    /** Where it begins. */
    START(0),
    /** Its middle. */
    MIDDLE(0.5),
    /** Where it ends. */
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** How much of the text lies before the place, from 0 to 1. */
    public double share() {
        return share;
    }
}
