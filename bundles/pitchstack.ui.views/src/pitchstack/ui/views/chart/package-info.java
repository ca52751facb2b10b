// SPDX-License-Identifier: EPL-2.0
/** Charts on the screen: drawn away from the user interface thread, as sharp as the screen, to be copied and saved. */
package pitchstack.ui.views.chart;
