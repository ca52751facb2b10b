// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

/**
 * One thing found.
 *
 * @param id the check that found it, a short stable word such as {@code pitch-not-positive}
 * @param severity how bad it is
 * @param place where it belongs
 * @param value the number found, with its unit
 * @param limit the number allowed, with its unit
 * @param sentence one plain sentence with the number and the way out
 */
public record Finding(String id, Severity severity, Place place, String value, String limit, String sentence) { }
