// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

/** When a setting over worn teeth may be offered. Barred teeth are never offered. */
public enum WornPolicy {
    /** Only where no clean setting lies within tolerance; the usual choice. */
    AVOID,
    /** As readily as a clean one; among equals the one with fewer worn stages. */
    ALLOW,
    /** Never. */
    NEVER
}
