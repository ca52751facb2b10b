// SPDX-License-Identifier: EPL-2.0
/** Keeps unsaved work beside its file while the program runs, and offers it after a crash. */
package pitchstack.ui.views.recovery;
