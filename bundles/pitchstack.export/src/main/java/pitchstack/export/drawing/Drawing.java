// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.time.LocalDate;
import java.util.List;

/**
 * A finished drawing.
 *
 * @param sheet how large the paper is
 * @param title what is drawn, for the properties of a file
 * @param creator who drew it, or nothing
 * @param date of issue, which is the date of the file too
 * @param parts what is drawn, the sheet's own frame first
 */
public record Drawing(SheetSize sheet, String title, String creator, LocalDate date, List<Part> parts) {
    /** Copies the list. */
    public Drawing {
        parts = List.copyOf(parts);
    }

    /** All marks, part by part. */
    public List<Mark> marks() {
        return parts.stream().flatMap(part -> part.marks().stream()).toList();
    }
}
