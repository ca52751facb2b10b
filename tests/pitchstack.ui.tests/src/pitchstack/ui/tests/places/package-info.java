// SPDX-License-Identifier: EPL-2.0
/** Where things are drawn, without a window. Expected numbers are worked out by hand or by counting one by one. */
package pitchstack.ui.tests.places;
