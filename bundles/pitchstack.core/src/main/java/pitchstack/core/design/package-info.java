// SPDX-License-Identifier: EPL-2.0
/** Finds pitches and rows for a travel and a finest step that are wanted, and proves what the result reaches. */
package pitchstack.core.design;
