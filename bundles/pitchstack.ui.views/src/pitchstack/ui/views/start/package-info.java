// SPDX-License-Identifier: EPL-2.0
/** Asks what a toolmaker knows, and begins a file with a checked stack. */
package pitchstack.ui.views.start;
