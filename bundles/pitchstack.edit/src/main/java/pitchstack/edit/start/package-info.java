// SPDX-License-Identifier: EPL-2.0
/** From what a toolmaker knows to a first stack that is checked. */
package pitchstack.edit.start;
