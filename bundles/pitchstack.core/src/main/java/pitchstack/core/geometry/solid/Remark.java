// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

/**
 * What is worth knowing before a part is made.
 *
 * @param id a word for programs
 * @param sentence what it is, with the number and the way out
 */
public record Remark(String id, String sentence) { }
