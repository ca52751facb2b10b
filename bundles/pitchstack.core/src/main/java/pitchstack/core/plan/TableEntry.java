// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import pitchstack.core.stack.Setting;

/**
 * The setting of least effort for one target of a table, without the steps to it.
 *
 * @param setting one index a stage
 * @param position the position it gives, a count of the scale
 * @param error position minus target; on a rotary axis the short way round
 * @param effortMs the effort of the move from the table's starting setting, in milliseconds
 */
public record TableEntry(Setting setting, long position, long error, long effortMs) { }
