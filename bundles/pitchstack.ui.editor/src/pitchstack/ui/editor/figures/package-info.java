// SPDX-License-Identifier: EPL-2.0
/** What is painted. A figure is given a scene and draws its part of it; it knows no document and no tools. */
package pitchstack.ui.editor.figures;
