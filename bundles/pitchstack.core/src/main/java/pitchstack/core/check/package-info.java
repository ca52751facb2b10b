// SPDX-License-Identifier: EPL-2.0
/** What is wrong, or will disappoint, in a stack: one check a class, each finding with its numbers and a way out. */
package pitchstack.core.check;
