// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.palette;

import java.util.Optional;
import java.util.OptionalInt;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.units.Scale;
import pitchstack.edit.AddElement;
import pitchstack.edit.Edit;
import pitchstack.edit.MarkTeeth;
import pitchstack.edit.MoveDatum;
import pitchstack.edit.PlaceStop;
import pitchstack.edit.StageKind;
import pitchstack.edit.ToothMark;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.WearKind;
import pitchstack.ui.editor.files.Shop;

/**
 * What placing a piece does.
 *
 * @param edit the change
 * @param words what it comes to, in a few words
 * @param added the new element, or the axis where none is new
 */
public record Placing(Edit edit, String words, EObject added) {
    /** Puts a stage at a place of the stack, the lowest at 0. */
    public static Placing stage(Axis axis, int position, StageKind kind) {
        Stage stage = kind.stage(axis);
        Shop.get().costs().giveTo(stage);
        String where = axis.getStages().isEmpty() || position == 0 ? "on the base"
                : "on “" + axis.getStages().get(position - 1).getName() + "”";
        return new Placing(AddElement.stage(axis, position, stage), stage.getName() + ", " + stage.getPitch() + ", " + where,
                stage);
    }

    /** Marks teeth as worn, at least one. */
    public static Placing worn(Row row, ToothSpan teeth) {
        String words = teeth.count() == 1 ? "mark tooth " + teeth.first() + " as worn"
                : "mark teeth " + teeth.first() + " to " + teeth.last() + " as worn";
        return new Placing(new MarkTeeth(new ToothMark(row, teeth.first(), teeth.last(), WearKind.WORN, "")), words, row);
    }

    /**
     * Puts a mark on the axis.
     *
     * @param carriage the position of the carriage
     * @param position where the mark goes, a count of the scale
     */
    public static Optional<Placing> mark(Piece piece, Axis axis, AxisSpec spec, long carriage, long position) {
        Scale scale = spec.scale();
        String at = TrueMinus.in(scale.format(scale.wrap(position)));
        return Optional.ofNullable(switch (piece) {
            case STOP -> stop(axis, spec, high(spec, carriage, position), position, at);
            case DATUM -> new Placing(new MoveDatum(axis, spec, position), at + " becomes 0", axis);
            case TARGET -> target(axis, scale, position, at);
            default -> null;
        });
    }

    private static Placing target(Axis axis, Scale scale, long position, String at) {
        AddElement.NewTarget made = AddElement.newTarget(axis, scale, scale.wrap(position));
        return new Placing(made.edit(), "target at " + at, made.target());
    }

    private static Placing stop(Axis axis, AxisSpec spec, boolean high, long position, String at) {
        return new Placing(new PlaceStop(axis, spec.scale(), high, spec.scale().wrap(position)),
                (high ? "high stop at " : "low stop at ") + at, axis);
    }

    /** Beside the carriage its side decides; at the carriage, the end of the travel that is nearer. */
    private static boolean high(AxisSpec spec, long carriage, long position) {
        if (position != carriage) {
            return position > carriage;
        }
        long low = spec.low().orElse(spec.datum());
        long high = spec.high().orElse(Math.max(low, carriage));
        return carriage - low > high - carriage || carriage > low && spec.high().isEmpty();
    }

    /** Where a stage goes that is put on a selected one: above it, or on top of the stack. */
    public static int above(Axis axis, OptionalInt selected) {
        return selected.isPresent() ? selected.getAsInt() + 1 : axis.getStages().size();
    }
}
