// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.util.List;
import java.util.Optional;
import pitchstack.core.design.FineStage;
import pitchstack.core.design.FineStages;
import pitchstack.core.design.Grain;
import pitchstack.core.design.StackLayout;

/**
 * A first layout for a wish, in counts.
 *
 * @param rackAtHand whether the rack is there already
 * @param layout pitches and rows, the rack first
 */
record StackDraft(boolean rackAtHand, StackLayout layout) {
    /** Teeth of a printed ring where none is at hand: 3° each, and still 3 mm at a radius of 60 mm. */
    private static final long RING_TEETH = 120;
    private static final List<String> ROUND_MM = List.of("1", "1.5", "2", "2.5", "3", "4", "5", "6", "8", "10", "12", "15",
            "20", "25", "30", "40");
    private static final List<String> ROUND_INCHES = List.of("0.05", "0.1", "0.15", "0.2", "0.25", "0.3", "0.4", "0.5",
            "0.75", "1", "1.25", "1.5", "2");

    /** A layout; empty where the step is too fine for its rack, see {@link #finestStep}. */
    static Optional<StackDraft> of(WishReading wish) {
        long rack = rack(wish);
        return rings(wish, rack).flatMap(rings -> rings.dividing(wish.step()))
                .or(() -> lengths(wish, rack).dividing(wish.step()))
                .map(fine -> new StackDraft(wish.rack().isPresent(), layout(wish, rack, fine)));
    }

    /** The finest step that a layout can be found for. */
    static long finestStep(WishReading wish) {
        return lengths(wish, rack(wish)).finest();
    }

    private static long rack(WishReading wish) {
        return wish.rack().orElseGet(() -> printedRack(wish));
    }

    /** Rings of whole numbers of teeth, where the axis turns; too coarse a choice for some steps. */
    private static Optional<FineStages> rings(WishReading wish, long rack) {
        long turn = wish.scale().turn();
        return turn == 0 ? Optional.empty() : Optional.of(new FineStages(rack, 0, Grain.rings(turn)));
    }

    private static FineStages lengths(WishReading wish, long rack) {
        return new FineStages(rack, wish.smallestPrinted(), Grain.of(wish.scale().parse(wish.scale().smallestSize())));
    }

    private static StackLayout layout(WishReading wish, long rack, List<FineStage> fine) {
        return wish.isWholeTurn() ? StackLayout.closed(wish.scale().turn(), rack, fine)
                : StackLayout.open(Math.addExact(wish.travel(), wish.step()), rack, fine);
    }

    private static long printedRack(WishReading wish) {
        long turn = wish.scale().turn();
        if (turn > 0) {
            return turn / Math.max(1, Math.min(RING_TEETH, -Math.floorDiv(-turn, wish.step())));
        }
        if (wish.step() >= wish.smallestPrinted()) {
            return wish.step();
        }
        List<String> round = wish.scale().smallestSize().endsWith("in") ? ROUND_INCHES : ROUND_MM;
        return round.stream().mapToLong(wish.scale()::parse)
                .filter(pitch -> pitch - wish.step() >= wish.smallestPrinted()).findFirst()
                .orElseGet(() -> wish.smallestPrinted() + wish.step());
    }
}
