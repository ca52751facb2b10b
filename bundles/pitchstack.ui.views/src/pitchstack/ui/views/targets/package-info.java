// SPDX-License-Identifier: EPL-2.0
/** The Target view: a position is typed, the moves that reach it are read, and applied as one change. */
package pitchstack.ui.views.targets;
