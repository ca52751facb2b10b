// SPDX-License-Identifier: EPL-2.0
/** What a person chooses for all files, and the list of keys. */
package pitchstack.ui.views.preferences;
