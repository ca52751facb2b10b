// SPDX-License-Identifier: EPL-2.0
/** The numbers behind the strip chart of the travel: what is in sight, and what each column of pixels shows. */
package pitchstack.ui.views.coverage.strip;
