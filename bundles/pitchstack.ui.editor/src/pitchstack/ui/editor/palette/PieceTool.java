// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.palette;

import org.eclipse.gef.requests.CreationFactory;
import org.eclipse.gef.tools.CreationTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.KeyEvent;

/** Places one piece where the drawing is clicked. Escape puts it back. */
public final class PieceTool extends CreationTool {
    private final Piece piece;

    /** @param piece what is in hand */
    public PieceTool(Piece piece) {
        super(new Made(piece));
        this.piece = piece;
    }

    /** What is in hand. */
    public Piece piece() {
        return piece;
    }

    @Override
    protected boolean handleKeyDown(KeyEvent event) {
        if (event.keyCode == SWT.ESC) {
            eraseTargetFeedback();
            getDomain().loadDefaultTool();
            return true;
        }
        return super.handleKeyDown(event);
    }

    /** What is new is selected by the policy that placed it, since it may be no child of the part that was clicked. */
    @Override
    protected void performCreation(int button) {
        executeCurrentCommand();
    }

    private record Made(Piece piece) implements CreationFactory {
        @Override
        public Object getNewObject() {
            return piece;
        }

        @Override
        public Object getObjectType() {
            return Piece.class;
        }
    }
}
