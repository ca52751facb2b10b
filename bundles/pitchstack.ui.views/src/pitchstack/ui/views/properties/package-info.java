// SPDX-License-Identifier: EPL-2.0
/** The facts of an element in the Properties view, each change an edit that can be undone. */
package pitchstack.ui.views.properties;
