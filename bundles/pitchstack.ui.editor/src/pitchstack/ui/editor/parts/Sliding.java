// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.OptionalLong;
import org.eclipse.gef.GraphicalEditPart;
import pitchstack.edit.Edit;
import pitchstack.ui.editor.places.Scene;

/** A mark on the ruler that can be moved along it. */
interface Sliding extends GraphicalEditPart {
    /** What it is called where it is spoken of: “target”. */
    String called();

    /** What it does at a position it is dragged to, the position given in words. */
    default String dragged(String at) {
        return called() + " at " + at;
    }

    /** Where it is, a count of the scale; empty where that cannot be read. */
    OptionalLong position();

    /** The position nearest to a wanted one at which it may be. */
    long allowed(long wanted);

    /** The edit that moves it to a position. */
    Edit movedTo(long position);

    /** Draws it at a position without changing the document. */
    void showAt(long position);

    /** Draws it where it is. */
    void show(Scene scene);
}
