// SPDX-License-Identifier: EPL-2.0
/** File &gt; Export Drawing: the choices for a fixture drawing, with the sheet as it will look. */
package pitchstack.ui.views.drawing;
