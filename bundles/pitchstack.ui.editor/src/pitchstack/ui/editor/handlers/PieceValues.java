// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.handlers;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.core.commands.IParameterValues;
import pitchstack.ui.editor.palette.Piece;

/** The pieces that can be placed, as the platform lists them beside the command. */
public final class PieceValues implements IParameterValues {
    @Override
    public Map<String, String> getParameterValues() {
        return Stream.of(Piece.values()).collect(Collectors.toMap(Piece::label, Piece::id));
    }
}
