// SPDX-License-Identifier: EPL-2.0
/** The user guide: Markdown pages of the help bundle, shown as styled text. */
package pitchstack.ui.views.guide;
