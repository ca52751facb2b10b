// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.ui.editor.palette.Piece;
import pitchstack.ui.editor.palette.Placing;
import pitchstack.ui.editor.parts.Elements;

/** Places a piece without the mouse: a stage on the selected one, a mark where the carriage stands. */
public final class PlaceHandler extends StageHandler {
    private static final String PIECE = "pitchstack.ui.editor.place.piece";

    @Override
    boolean applies(EObject element) {
        return Elements.axis(element).isPresent();
    }

    @Override
    void run(ExecutionEvent event, Session session, EObject element) {
        Axis axis = Elements.axis(element).orElseThrow();
        placing(Piece.named(event.getParameter(PIECE)).orElseThrow(), session, axis, element).ifPresent(placing -> {
            session.run(placing.edit());
            select(event, placing.added());
        });
    }

    private static Optional<Placing> placing(Piece piece, Session session, Axis axis, EObject element) {
        if (piece.kind().isPresent()) {
            OptionalInt selected = Elements.stage(element).stream().mapToInt(Elements::number).findFirst();
            return Optional.of(Placing.stage(axis, Placing.above(axis, selected), piece.kind().get()));
        }
        if (piece == Piece.WORN) {
            return Elements.row(element).map(row -> Placing.worn(row, new ToothSpan(0, 0)));
        }
        AxisSpec spec = session.analysis(axis).spec();
        long carriage = spec.position(session.analysis(axis).current());
        return Placing.mark(piece, axis, spec, carriage, carriage);
    }
}
