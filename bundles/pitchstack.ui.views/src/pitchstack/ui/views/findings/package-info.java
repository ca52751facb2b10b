// SPDX-License-Identifier: EPL-2.0
/** The Findings view: what the checks say of every axis of the stack in front. */
package pitchstack.ui.views.findings;
