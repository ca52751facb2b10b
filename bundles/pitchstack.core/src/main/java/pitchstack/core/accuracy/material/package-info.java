// SPDX-License-Identifier: EPL-2.0
/** What rows and work are made of, with how well the numbers are known. */
package pitchstack.core.accuracy.material;
