// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.design;

/**
 * A printed stage between rack and carriage.
 *
 * @param pitch counts a tooth
 * @param indices how many neighbouring indices it needs, at least 1
 */
public record FineStage(long pitch, int indices) { }
