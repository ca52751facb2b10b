// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.teeth;

/**
 * How a tooth is made softer, so that a bearable preload brings more teeth to bear.
 *
 * @param slotM width of a slot down the middle of the tooth to its root, 0 for none
 * @param oneLeafBears whether only the leaf beside the loaded flank bears; otherwise both leaves are tied at the load
 * @param wellM how much deeper than the dedendum the gaps are cut, straight down, at least 0
 */
public record ToothVariant(double slotM, boolean oneLeafBears, double wellM) {
    /** As it is. */
    public static final ToothVariant SOLID = new ToothVariant(0, false, 0);

    /** Checks the numbers. */
    public ToothVariant {
        if (!(slotM >= 0 && wellM >= 0) || (oneLeafBears && slotM == 0)) {
            throw new IllegalArgumentException("A slot and a well are at least 0 wide and deep, and leaves need a slot");
        }
    }
}
