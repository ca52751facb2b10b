// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** Why a target is out of reach. */
public enum Reason {
    /** It lies below the lowest or above the highest position that any setting gives. */
    BEYOND_TRAVEL,
    /** It lies within the travel, but no setting comes within tolerance of it, worn and barred teeth or not. */
    BETWEEN_STEPS,
    /** A setting would reach it, but only over teeth that are barred or, where worn teeth are refused, worn. */
    UNUSABLE_TEETH
}
