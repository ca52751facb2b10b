// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/** One line of small labels that must not run into each other: who comes first keeps the place. */
public final class LabelLane {
    private final List<Extent> taken = new ArrayList<>();
    private final Extent room;
    private final double spacePx;

    /**
     * @param room where labels may stand
     * @param spacePx the least space between two labels
     */
    public LabelLane(Extent room, double spacePx) {
        this.room = room;
        this.spacePx = spacePx;
    }

    /** Takes a stretch for a label if all of it is free and in the room, and tells whether it was. */
    public boolean take(Extent label) {
        if (!isFree(label)) {
            return false;
        }
        taken.add(label);
        return true;
    }

    /**
     * Takes the free stretch that is nearest to a wanted one.
     *
     * @param wanted where the label would best stand
     * @return the left end of the label; empty where there is no room left
     */
    public OptionalDouble takeNear(Extent wanted) {
        return takeNear(wanted, List.of(), label -> true);
    }

    /**
     * Takes the nearest stretch that touches what the label names and lies over nothing else that has a label of its
     * own, so that no label can be read as another's.
     *
     * @param wanted where the label would best stand
     * @param named what it names
     * @param others what other labels name
     * @return the left end of the label; empty where there is no such room left
     */
    public OptionalDouble takeAt(Extent wanted, Extent named, List<Extent> others) {
        return takeNear(wanted, others, label -> label.from() <= named.to() + spacePx && named.from() - spacePx <= label.to()
                && others.stream().noneMatch(other -> label.from() < other.to() && other.from() < label.to()));
    }

    private OptionalDouble takeNear(Extent wanted, List<Extent> beside, Predicate<Extent> allowed) {
        List<Double> lefts = new ArrayList<>(List.of(wanted.from(), room.from(), room.to() - wanted.length()));
        for (Extent other : taken) {
            lefts.add(other.to() + spacePx);
            lefts.add(other.from() - spacePx - wanted.length());
        }
        for (Extent other : beside) {
            lefts.add(other.to());
            lefts.add(other.from() - wanted.length());
        }
        OptionalDouble left = lefts.stream().map(at -> new Extent(at, at + wanted.length()))
                .filter(label -> isFree(label) && allowed.test(label)).map(Extent::from)
                .sorted((a, b) -> Double.compare(Math.abs(a - wanted.from()), Math.abs(b - wanted.from())))
                .mapToDouble(Double::doubleValue).findFirst();
        left.ifPresent(at -> taken.add(new Extent(at, at + wanted.length())));
        return left;
    }

    private boolean isFree(Extent label) {
        return label.from() >= room.from() && label.to() <= room.to() && taken.stream().noneMatch(
                other -> label.from() < other.to() + spacePx && other.from() < label.to() + spacePx);
    }
}
