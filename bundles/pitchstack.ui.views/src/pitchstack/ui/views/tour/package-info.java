// SPDX-License-Identifier: EPL-2.0
/** A first tour on the fence: a list of things to do that ticks off what is done. */
package pitchstack.ui.views.tour;
