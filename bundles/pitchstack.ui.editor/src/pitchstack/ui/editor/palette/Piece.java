// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.palette;

import java.util.Locale;
import java.util.Optional;
import pitchstack.edit.StageKind;

/** Something that can be put on the drawing. */
public enum Piece {
    /** A long bought rack with the body on it. */
    RACK("Rack", "a long bought rack and the body that rides on it: click where in the stack it goes",
            StageKind.BOUGHT_RACK),
    /** Two printed rows of a slightly different pitch. */
    PAIR("Pair", "two printed rows of a slightly finer pitch, for the fine step: click where in the stack they go",
            StageKind.PRINTED_PAIR),
    /** A short coarse stage that carries the carriage. */
    CARRIAGE("Carriage", "a short coarse stage that carries the carriage: click where in the stack it goes",
            StageKind.PLAIN_CARRIAGE),
    /** An end of the travel. */
    STOP("Stop", "a stop that ends the travel: click left of the carriage for the low end, right of it for the high end",
            null),
    /** Where positions count from. */
    DATUM("Datum", "the datum: click the place that shall be position 0", null),
    /** A worn tooth. */
    WORN("Worn", "worn teeth: click a tooth of a row, or draw over several", null),
    /** A saved target. */
    TARGET("Target", "a target: click where the carriage shall stand", null);

    private final String label;
    private final String meaning;
    private final StageKind kind;

    Piece(String label, String meaning, StageKind kind) {
        this.label = label;
        this.meaning = meaning;
        this.kind = kind;
    }

    /** The piece that a command names, if there is such a one. */
    public static Optional<Piece> named(String id) {
        for (Piece piece : values()) {
            if (piece.id().equals(id)) {
                return Optional.of(piece);
            }
        }
        return Optional.empty();
    }

    /** A short word for commands and icons. */
    public String id() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it is called. */
    public String label() {
        return label;
    }

    /** What it is and how it is placed, with the key that does the same. */
    public String tip() {
        return "Place " + meaning + " (Ctrl+" + (ordinal() + 1) + ")";
    }

    /** The kind of stage that it is; empty for a mark on the axis. */
    public Optional<StageKind> kind() {
        return Optional.ofNullable(kind);
    }
}
