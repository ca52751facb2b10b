// SPDX-License-Identifier: EPL-2.0
/** Which of several axes is looked at. */
package pitchstack.ui.views.axes;
