// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.parts;

import java.util.List;
import java.util.Optional;
import org.eclipse.draw2d.geometry.Dimension;
import org.eclipse.draw2d.geometry.Point;
import org.eclipse.draw2d.geometry.Rectangle;
import org.eclipse.gef.EditPart;
import org.eclipse.gef.Request;
import org.eclipse.gef.RequestConstants;
import org.eclipse.gef.commands.Command;
import org.eclipse.gef.editpolicies.GraphicalEditPolicy;
import org.eclipse.gef.requests.CreateRequest;
import pitchstack.core.stack.ToothSpan;
import pitchstack.model.Row;
import pitchstack.ui.editor.palette.Piece;
import pitchstack.ui.editor.palette.Placing;
import pitchstack.ui.editor.places.Scene;

/** Places a piece where the pointer is: a stage between two bodies, a mark at a position, a worn tooth on a row. */
final class PlacePolicy extends GraphicalEditPolicy {
    private final SideView view;
    private final PlaceMark mark;

    PlacePolicy(SideView view) {
        this.view = view;
        mark = new PlaceMark(view, this::getLayer);
    }

    @Override
    public EditPart getTargetEditPart(Request request) {
        return RequestConstants.REQ_CREATE.equals(request.getType()) ? getHost() : null;
    }

    @Override
    public Command getCommand(Request request) {
        return placing(request).<Command>map(placing -> new EditCommand(placing.edit(), placing.added())).orElse(null);
    }

    @Override
    public void showTargetFeedback(Request request) {
        if (!RequestConstants.REQ_CREATE.equals(request.getType())) {
            return;
        }
        Point at = at((CreateRequest) request);
        Piece piece = piece(request);
        Scene scene = view.scene();
        String words = placing(request).map(Placing::words)
                .orElse(piece == Piece.WORN ? "point at a tooth of a row" : "not here");
        if (piece.kind().isPresent()) {
            int y = scene.bands().gapY(scene.bands().gap(at.y));
            mark.show(new Rectangle((int) scene.open().from(), y - 2, (int) scene.open().length(), 4), words, at);
        } else if (piece == Piece.WORN) {
            mark.show(new Rectangle(), words, at);
        } else {
            int x = (int) Math.round(scene.mapping().px(scene.snapped(at.x)));
            mark.show(new Rectangle(x - 1, scene.top(), 2, scene.height()), words, at);
        }
    }

    @Override
    public void eraseTargetFeedback(Request request) {
        mark.hide();
    }

    private static Piece piece(Request request) {
        return (Piece) ((CreateRequest) request).getNewObject();
    }

    private Point at(CreateRequest request) {
        Point at = request.getLocation().getCopy();
        getHostFigure().translateToRelative(at);
        return at;
    }

    private Optional<Placing> placing(Request request) {
        if (!RequestConstants.REQ_CREATE.equals(request.getType())) {
            return Optional.empty();
        }
        AxisEditPart host = (AxisEditPart) getHost();
        Piece piece = piece(request);
        Point at = at((CreateRequest) request);
        Scene scene = view.scene();
        if (piece.kind().isPresent()) {
            return Optional.of(Placing.stage(host.axis(), scene.bands().gap(at.y), piece.kind().get()));
        }
        if (at.x < scene.open().from()) {
            return Optional.empty();
        }
        return piece == Piece.WORN ? worn((CreateRequest) request)
                : Placing.mark(piece, host.axis(), scene.spec(), carriage(scene),
                        scene.snapped(at.x));
    }

    /** Where numbers too large give no position, the datum does as well for telling left from right. */
    private long carriage(Scene scene) {
        return view.session().analysis().position(view.session().shown()).orElse(scene.spec().datum());
    }

    /** The teeth that are clicked, or drawn over from the first to the last. */
    private Optional<Placing> worn(CreateRequest request) {
        Dimension drawn = request.getSize() == null ? new Dimension() : request.getSize();
        Rectangle over = new Rectangle(request.getLocation(), drawn);
        for (Point corner : List.of(over.getTopLeft(), over.getTopRight(), over.getBottomLeft(), over.getBottomRight())) {
            Optional<Row> row = row(corner);
            if (row.isPresent()) {
                Point at = at(request);
                ToothSpan teeth = ((StackViewer) getHost().getViewer()).teeth(row.get(), at.x, at.x + drawn.width);
                return teeth.isEmpty() ? Optional.empty() : Optional.of(Placing.worn(row.get(), teeth));
            }
        }
        return Optional.empty();
    }

    private Optional<Row> row(Point location) {
        EditPart pointed = getHost().getViewer().findObjectAt(location);
        return pointed instanceof RowEditPart part ? Optional.of(part.row())
                : pointed instanceof WornRangeEditPart part ? Optional.of(((RowEditPart) part.getParent()).row())
                : Optional.empty();
    }
}
