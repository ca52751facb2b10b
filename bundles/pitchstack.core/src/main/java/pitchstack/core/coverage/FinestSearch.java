// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Optional;
import pitchstack.core.coverage.Bounds.Arc;

/**
 * Finds the widest spacing of neighbouring positions. What is joined at a spacing hides only narrower ones, and the
 * wider it is, the fewer runs are left; so it is halved until a wider one is found.
 *
 * @param scan what is reached
 */
record FinestSearch(Scan scan) {
    /** The finest step, or empty where nothing can be set. */
    Optional<FinestStep> search() {
        if (scan.isEmpty() || scan.bounds().arcs().isEmpty()) {
            return Optional.empty();
        }
        long join = scan.bounds().turn() == 0 ? scan.allPlaces().high() - scan.allPlaces().low() : scan.bounds().turn();
        Optional<FinestStep> found = search(join);
        while (found.isPresent() && found.get().spacing() <= join && join > 0) {
            join /= 2;
            found = search(join);
        }
        return found;
    }

    /** As found with all joined that is no wider apart than {@code join}: exact where the spacing is above that. */
    private Optional<FinestStep> search(long join) {
        return scan.bounds().turn() == 0 ? onLine(join) : onTurn(join);
    }

    private Optional<FinestStep> onLine(long join) {
        Widest widest = new Widest();
        scan.walk(scan.allPlaces(), join, widest);
        Arc travel = scan.bounds().arcs().get(0);
        return widest.isEmpty() ? Optional.empty() : Optional.of(new FinestStep(widest.spacing,
                Math.max(widest.spacing / 2, Math.max(widest.lowest - travel.low(), travel.high() - widest.highest))));
    }

    private Optional<FinestStep> onTurn(long join) {
        Spans positions = scan.positions(join);
        if (positions.isEmpty()) {
            return Optional.empty();
        }
        FinestStep finest = inGap(positions.highest(), positions.lowest() + scan.bounds().turn());
        for (int i = 1; i < positions.size(); i++) {
            finest = finest.worse(inGap(positions.last(i - 1), positions.first(i)));
        }
        return Optional.of(finest);
    }

    /** What one gap between neighbouring positions amounts to, so far as it lies in the travel. */
    private FinestStep inGap(long below, long above) {
        if (scan.bounds().allRound()) {
            return new FinestStep(above - below, (above - below) / 2);
        }
        long turn = scan.bounds().turn();
        long middle = below + (above - below) / 2;
        FinestStep finest = new FinestStep(0, 0);
        for (Arc arc : scan.bounds().arcs()) {
            for (long shift = -turn; shift <= turn; shift += turn) {
                Arc open = new Arc(arc.low() + shift, arc.high() + shift).and(new Arc(below, above));
                if (!open.isEmpty()) {
                    long hardest = Math.max(open.low(), Math.min(open.high(), middle));
                    long spacing = open.low() == below && open.high() == above ? above - below : 0;
                    finest = finest.worse(new FinestStep(spacing, Math.min(hardest - below, above - hardest)));
                }
            }
        }
        return finest;
    }

    /** Follows the spacings along a line without keeping the runs. */
    private static final class Widest implements LapSink {
        private long lowest = Long.MAX_VALUE;
        private long highest;
        private long spacing;

        private boolean isEmpty() {
            return lowest == Long.MAX_VALUE;
        }

        @Override
        public void run(long first, long last) {
            if (isEmpty()) {
                lowest = first;
                highest = last;
            } else {
                spacing = Math.max(spacing, first - highest);
                highest = Math.max(highest, last);
            }
        }

        @Override
        public void lap(long base, Spans residues) {
            if (!residues.isEmpty()) {
                step(base, residues, residues.widestGap());
            }
        }

        @Override
        public void alike(long base, long laps, long pitch, Spans residues) {
            long inside = residues.widestGap();
            step(base, residues, inside);
            if (laps > 1) {
                step(base + pitch, residues, inside);
                highest = base + (laps - 1) * pitch + residues.highest();
            }
        }

        private void step(long base, Spans residues, long inside) {
            if (isEmpty()) {
                lowest = base + residues.lowest();
            } else {
                spacing = Math.max(spacing, base + residues.lowest() - highest);
            }
            highest = base + residues.highest();
            spacing = Math.max(spacing, inside);
        }
    }
}
