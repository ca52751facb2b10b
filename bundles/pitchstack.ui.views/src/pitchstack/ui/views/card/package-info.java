// SPDX-License-Identifier: EPL-2.0
/** File &gt; Export Setting Card: the choices for the card at the machine, with its first sheet as it will look. */
package pitchstack.ui.views.card;
