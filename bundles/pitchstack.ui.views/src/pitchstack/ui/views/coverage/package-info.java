// SPDX-License-Identifier: EPL-2.0
/** The Coverage view: which positions of the travel are reached, as a strip chart and in numbers. */
package pitchstack.ui.views.coverage;
