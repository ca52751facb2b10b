// SPDX-License-Identifier: EPL-2.0
/** The editor in a real window, moved by real events; and its geometry, which needs none. */
package pitchstack.ui.tests.editor;
