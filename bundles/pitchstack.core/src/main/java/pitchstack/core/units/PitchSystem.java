// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.units;

/** The way in which a tooth spacing is given. It is part of the value: 0.1 in circular pitch is not 32 DP. */
public enum PitchSystem {
    /** The spacing itself, a length or, on a rotary axis, an angle. */
    SPACING,
    /** Circular pitch: the spacing along the pitch line, a length. */
    CIRCULAR_PITCH,
    /** Module m in millimetres: the spacing is π·m (ISO 54). */
    MODULE,
    /** Diametral pitch DP per inch: the spacing is π/DP inch. */
    DIAMETRAL_PITCH,
    /** Whole teeth in one turn of a ring. */
    TEETH_PER_TURN
}
