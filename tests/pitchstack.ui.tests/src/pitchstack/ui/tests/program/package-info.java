// SPDX-License-Identifier: EPL-2.0
/** Checks of whole programs in processes of their own, which are started, driven from inside, and ended or killed. */
package pitchstack.ui.tests.program;
