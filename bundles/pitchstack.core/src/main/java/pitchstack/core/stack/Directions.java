// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Which way each stage of an axis moved last. A stage that does not move keeps its own.
 *
 * @param byStage one a stage, lowest stage first
 */
public record Directions(List<Direction> byStage) {
    /** By number of stages, for as many as are common: each plan asks for one of them. */
    private static final List<Directions> UNKNOWN = IntStream.rangeClosed(0, 8)
            .mapToObj(n -> new Directions(Collections.nCopies(n, Direction.UNKNOWN))).toList();

    /** Copies the list. */
    public Directions {
        byStage = List.copyOf(byStage);
    }

    /** Nothing is known of any stage. */
    public static Directions unknown(int stages) {
        return stages < UNKNOWN.size() ? UNKNOWN.get(stages)
                : new Directions(Collections.nCopies(stages, Direction.UNKNOWN));
    }

    /** These, lowest stage first. */
    public static Directions of(Direction... byStage) {
        return new Directions(List.of(byStage));
    }

    /** How many stages there are. */
    public int size() {
        return byStage.size();
    }

    /** Of one stage, counted from the lowest, 0. */
    public Direction of(int stage) {
        return byStage.get(stage);
    }
}
