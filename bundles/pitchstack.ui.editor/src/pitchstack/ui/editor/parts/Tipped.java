// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import org.eclipse.draw2d.geometry.Point;

/** Something drawn that says more when the pointer rests on it. */
interface Tipped {
    /** A few lines. */
    String tip();

    /** The words for a point of the canvas. */
    default String tip(Point at) {
        return tip();
    }
}
