// SPDX-License-Identifier: EPL-2.0
/** From what a file stores to the numbers of the core, and from a finding back to the element it belongs to. */
package pitchstack.analysis;
