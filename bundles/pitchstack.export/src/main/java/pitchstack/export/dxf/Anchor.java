// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

/** Which point of a line of text its position gives. */
public enum Anchor {
    /** The left end of its base line. */
    LEFT,
    /** The middle of its base line. */
    CENTRE,
    /** The right end of its base line. */
    RIGHT
}
