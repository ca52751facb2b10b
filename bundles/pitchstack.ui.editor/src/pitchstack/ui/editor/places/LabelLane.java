// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
        List<Double> lefts = new ArrayList<>(List.of(wanted.from(), room.from(), room.to() - wanted.length()));
        for (Extent other : taken) {
            lefts.add(other.to() + spacePx);
            lefts.add(other.from() - spacePx - wanted.length());
        }
        OptionalDouble left = lefts.stream().filter(at -> isFree(new Extent(at, at + wanted.length())))
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
