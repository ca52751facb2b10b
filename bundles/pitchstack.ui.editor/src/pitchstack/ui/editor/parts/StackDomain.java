// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.Optional;
import java.util.function.Consumer;
import org.eclipse.gef.DefaultEditDomain;
import org.eclipse.gef.Tool;
import org.eclipse.ui.IEditorPart;
import pitchstack.ui.editor.palette.Piece;
import pitchstack.ui.editor.palette.PieceTool;

/** The tools of one editor: the hand, or a piece that is to be placed. */
public final class StackDomain extends DefaultEditDomain {
    private Consumer<Optional<Piece>> listener = piece -> { };

    /** @param editor the editor */
    public StackDomain(IEditorPart editor) {
        super(editor);
    }

    /** @param told of the piece in hand whenever it changes */
    public void onPiece(Consumer<Optional<Piece>> told) {
        listener = told;
    }

    /** Takes a piece into the hand, or puts it back. */
    public void take(Optional<Piece> piece) {
        if (piece.isPresent()) {
            setActiveTool(new PieceTool(piece.get()));
        } else {
            loadDefaultTool();
        }
    }

    @Override
    public void setActiveTool(Tool tool) {
        super.setActiveTool(tool);
        if (listener != null) {
            listener.accept(tool instanceof PieceTool made ? Optional.of(made.piece()) : Optional.empty());
        }
    }
}
