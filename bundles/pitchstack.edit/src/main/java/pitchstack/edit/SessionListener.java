// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

/** Hears of every change of a session. */
@FunctionalInterface
public interface SessionListener {
    /** What changed. */
    enum Change {
        /** The document, by an edit, an undo or a redo; all that is known of it may be new. */
        DOCUMENT,
        /** The setting shown while a stage is dragged, not the document. */
        PREVIEW,
        /** The move that is proposed, not the document. */
        PROPOSED,
        /** Which axis is looked at. */
        AXIS,
        /** Which teeth are supposed to be worn or barred, not the document. */
        SUPPOSED,
        /** Which position is pointed at, not the document. */
        POINTED,
        /** Where the document is kept, or that it has been saved. */
        FILE
    }

    /** Called after the change, on the thread that made it. */
    void changed(Change change);
}
