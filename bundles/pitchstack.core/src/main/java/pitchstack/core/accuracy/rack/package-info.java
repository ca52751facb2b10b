// SPDX-License-Identifier: EPL-2.0
/** What the grade of a bought rack promises, until it is measured. */
package pitchstack.core.accuracy.rack;
