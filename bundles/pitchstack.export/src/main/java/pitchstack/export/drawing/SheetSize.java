// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

/**
 * Trimmed sheets of ISO 5457 (sizes of ISO 216), smallest first; A4 stands upright, the others lie. The border is 20 mm
 * on the left for filing and 10 mm elsewhere.
 */
public enum SheetSize {
    /** 210 × 297 mm. */
    A4(210, 297),
    /** 420 × 297 mm. */
    A3(420, 297),
    /** 594 × 420 mm. */
    A2(594, 420),
    /** 841 × 594 mm. */
    A1(841, 594);

    private static final double FILING_BORDER = 20;
    private static final double BORDER = 10;

    private final double widthMm;
    private final double heightMm;

    SheetSize(double widthMm, double heightMm) {
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** From left to right. */
    public double widthMm() {
        return widthMm;
    }

    /** From bottom to top. */
    public double heightMm() {
        return heightMm;
    }

    /** What the frame encloses. */
    public Box drawingSpace() {
        return new Box(FILING_BORDER, BORDER, widthMm - BORDER, heightMm - BORDER);
    }
}
