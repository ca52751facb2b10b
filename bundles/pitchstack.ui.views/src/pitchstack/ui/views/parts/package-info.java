// SPDX-License-Identifier: EPL-2.0
/** File &gt; Export Parts: which rows to make, with their outlines as they lie on the bed. */
package pitchstack.ui.views.parts;
