// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/**
 * Why a target is out of reach. "Any setting" means one that the rows, the stops and the shift limits allow, whatever
 * the state of its teeth. Teeth are the reason wherever better ones would bring the target within tolerance.
 */
public enum Reason {
    /**
     * It lies below the lowest or above the highest position that any setting gives. On a rotary axis: it lies outside
     * the arc that the stops leave free, or that the rows and any limit over all stages reach, or there is no setting.
     */
    BEYOND_TRAVEL,
    /** It lies within the travel, but no setting comes within tolerance of it, worn and barred teeth or not. */
    BETWEEN_STEPS,
    /**
     * Settings over usable teeth lie within tolerance, but no move leads to one from where the stages stand: every
     * order of steps breaks a limit on the way, or the tooth further that the approach rule needs may not be used.
     */
    NO_MOVE,
    /** A setting would reach it, but only over teeth that are barred or, where worn teeth are refused, worn. */
    UNUSABLE_TEETH
}
