// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * What the checks look at.
 *
 * @param axis the axis
 * @param current where its stages stand
 * @param lineWidthM width of a printed line in metres, above 0
 */
public record Subject(AxisSpec axis, Setting current, double lineWidthM) { }
