// SPDX-License-Identifier: EPL-2.0
/** What all views share: the session of the editor in front, the way to an element, and commands of other bundles. */
package pitchstack.ui.views;
