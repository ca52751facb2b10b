// SPDX-License-Identifier: EPL-2.0
/** The Wear view: marked teeth in a table, what supposed marks would cost, and how often each tooth will be seated. */
package pitchstack.ui.views.wear;
