// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Row;
import pitchstack.model.Target;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/**
 * A target or marked teeth as a line of text, to be copied within a document or to another. The fields are parted by tabs:
 * {@code target}, name, position, tolerance, note, tolerance of its axis; or {@code worn} or {@code barred}, first tooth, last tooth, note. A position
 * has its unit, so that it stays the same in a file of another unit.
 */
public final class MarkText {
    private static final String TARGET = "target";
    private static final String TAB = "\t";

    private MarkText() {
    }

    /** What comes of pasting a text. */
    public sealed interface Pasted permits Fits, Refused { }

    /**
     * The text fits.
     *
     * @param edit puts it into the document
     * @param into the list whose last element is the new one afterwards
     */
    public record Fits(Edit edit, List<? extends EObject> into) implements Pasted { }

    /**
     * The text is one of a mark, but has no place there.
     *
     * @param why one sentence with the way out
     */
    public record Refused(String why) implements Pasted { }

    /** A target as text. */
    public static String of(Target target, Scale scale) {
        String usual = target.eContainer() instanceof Axis axis ? withUnit(axis.getTolerance(), scale) : null;
        return line(TARGET, target.getName(), withUnit(target.getPosition(), scale), withUnit(target.getTolerance(), scale),
                target.getNote(), usual);
    }

    /** Marked teeth as text. */
    public static String of(WornRange range) {
        return line(range.getKind().getLiteral(), Integer.toString(range.getFirst()), Integer.toString(range.getLast()),
                range.getNote());
    }

    private static String line(String... fields) {
        return Stream.of(fields).map(field -> field == null ? "" : field.replaceAll("\\s+", " "))
                .collect(Collectors.joining(TAB));
    }

    /** A text that cannot be read is copied as it is. */
    private static String withUnit(String typed, Scale scale) {
        try {
            return typed == null ? null : TypedText.withUnit(typed, scale);
        } catch (QuantityException unreadable) {
            return typed;
        }
    }

    /**
     * What pasting a text does.
     *
     * @param axis the axis that a target joins
     * @param scale the scale of that axis
     * @param row the row whose teeth are marked; empty if none is selected
     * @return empty if it is not the text of a mark
     */
    public static Optional<Pasted> paste(String text, Axis axis, Scale scale, Optional<Row> row) {
        String[] fields = text.strip().split(TAB, -1);
        if (fields[0].equals(TARGET) && fields.length >= 3) {
            return Optional.of(target(fields, axis, scale));
        }
        WearKind kind = WearKind.get(fields[0]);
        if (kind == null || fields.length < 3 || !isTooth(fields[1]) || !isTooth(fields[2])) {
            return Optional.empty();
        }
        return Optional.of(row.map(on -> teeth(new ToothMark(on, Integer.parseInt(fields[1]), Integer.parseInt(fields[2]), kind,
                field(fields, 3)))).orElseGet(() -> new Refused("Teeth of a row were copied last. Select the row that is to be"
                        + " marked, and paste again.")));
    }

    /** Seven digits, which more teeth than a row can have do not need. */
    private static boolean isTooth(String field) {
        return field.matches("\\d{1,7}");
    }

    private static String field(String[] fields, int number) {
        return number < fields.length ? fields[number] : "";
    }

    private static Pasted teeth(ToothMark mark) {
        return MarkRules.refusal(mark).<Pasted>map(Refused::new)
                .orElseGet(() -> new Fits(new MarkTeeth(mark), mark.row().getWorn()));
    }

    private static Pasted target(String[] fields, Axis axis, Scale scale) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName(orNull(fields[1]));
        target.setNote(orNull(field(fields, 4)));
        try {
            target.setPosition(TypedText.of(scale, scale.wrap(scale.parse(fields[2]))));
            if (!field(fields, 3).isEmpty()) {
                scale.parse(fields[3]);
                target.setTolerance(fields[3]);
            } else if (isOther(field(fields, 5), axis, scale)) {
                target.setTolerance(fields[5]);
            }
        } catch (QuantityException notHere) {
            return new Refused("The copied target does not fit on “" + axis.getName() + "”: " + notHere.getMessage());
        }
        String called = target.getName() == null ? "" : " “" + target.getName() + "”";
        return new Fits(new AddTargets(axis, axis.getTargets().size(), List.of(target), "Paste target" + called),
                axis.getTargets());
    }

    /** Whether a target without a tolerance of its own had another on its axis than it would have here. */
    private static boolean isOther(String usual, Axis axis, Scale scale) throws QuantityException {
        return !usual.isEmpty() && (axis.getTolerance() == null || scale.parse(usual) != scale.parse(axis.getTolerance()));
    }

    private static String orNull(String field) {
        return field.isEmpty() ? null : field;
    }
}
