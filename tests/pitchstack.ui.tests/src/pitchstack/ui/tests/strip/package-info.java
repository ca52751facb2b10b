// SPDX-License-Identifier: EPL-2.0
/** The numbers behind the strip chart of the travel. */
package pitchstack.ui.tests.strip;
