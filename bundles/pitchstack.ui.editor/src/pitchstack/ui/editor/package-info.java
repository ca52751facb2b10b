// SPDX-License-Identifier: EPL-2.0
/**
 * The editor of a positioner: a side view of one axis at a time, on which stages are moved tooth by tooth. No other
 * bundle knows how it is drawn; views ask the active editor for its {@link pitchstack.edit.Session} instead.
 */
package pitchstack.ui.editor;
