// SPDX-License-Identifier: EPL-2.0
/** The welcome page: what the program is for, the examples, and the cautions. */
package pitchstack.ui.views.welcome;
