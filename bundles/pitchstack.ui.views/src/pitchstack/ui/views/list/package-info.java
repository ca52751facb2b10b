// SPDX-License-Identifier: EPL-2.0
/** The Target list view: all targets of an axis in a table, planned together, changed in place and set in turn. */
package pitchstack.ui.views.list;
