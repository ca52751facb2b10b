// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.List;

/**
 * What belongs together on a sheet, such as a view or the title block.
 *
 * @param name unlike that of any other part of the sheet: letters, digits and hyphens
 * @param box what it takes up; no other part reaches into it
 * @param marks what is drawn
 */
public record Part(String name, Box box, List<Mark> marks) {
    /** Copies the list. */
    public Part {
        marks = List.copyOf(marks);
    }

    /** The same part so much to the right and up. */
    public Part moved(double right, double up) {
        return new Part(name, box.moved(right, up), marks.stream().map(mark -> mark.moved(right, up)).toList());
    }

    /** The same part with its lower left corner somewhere. */
    public Part at(double left, double bottom) {
        return moved(left - box.left(), bottom - box.bottom());
    }
}
