// SPDX-License-Identifier: EPL-2.0
/** What warmth and moisture do to lengths. All lengths are meant at 20 °C, the reference temperature of ISO 1. */
package pitchstack.core.accuracy.thermal;
