// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Where x of the part comes to lie on paper in a view from which stretches between the interesting ones are left out.
 *
 * @param factor paper per part
 * @param pieces the stretches that are drawn, from left to right
 */
record BrokenLine(double factor, List<Piece> pieces) {
    /** Paper between two pieces. */
    static final double BREAK = 5;
    private static final int HALVINGS = 40;

    /**
     * A stretch.
     *
     * @param from its left end on the part
     * @param to its right end
     * @param paper where its left end lies on paper
     */
    record Piece(double from, double to, double paper) {
        boolean holds(double x) {
            return from <= x && x <= to;
        }
    }

    /** A stretch of the part. */
    record Stretch(double from, double to) {
        Stretch wider(double margin, Stretch limits) {
            return new Stretch(Math.max(limits.from, from - margin), Math.min(limits.to, to + margin));
        }

        double length() {
            return to - from;
        }
    }

    /**
     * The widest view that fits.
     *
     * @param whole all there is
     * @param interesting what must be seen, each within {@code whole}
     * @param margin how much of the part must be seen on either side of it
     * @param widthMm how much paper there is
     * @return nothing where even that does not fit
     */
    static Optional<BrokenLine> fitting(Stretch whole, List<Stretch> interesting, double margin, double factor,
            double widthMm) {
        if (whole.length() * factor <= widthMm) {
            return Optional.of(of(List.of(whole), factor));
        }
        if (width(merged(whole, interesting, margin, factor), factor) > widthMm) {
            return Optional.empty();
        }
        double fits = margin;
        double tooWide = margin + whole.length();
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (fits + tooWide) / 2;
            if (width(merged(whole, interesting, middle, factor), factor) <= widthMm) {
                fits = middle;
            } else {
                tooWide = middle;
            }
        }
        return Optional.of(of(merged(whole, interesting, fits, factor), factor));
    }

    /** Stretches with their margins; those that would leave out no more than a break takes are joined. */
    private static List<Stretch> merged(Stretch whole, List<Stretch> interesting, double margin, double factor) {
        List<Stretch> merged = new ArrayList<>();
        List<Stretch> sorted = interesting.stream().map(stretch -> stretch.wider(margin, whole))
                .sorted(Comparator.comparingDouble(Stretch::from)).toList();
        for (Stretch next : sorted) {
            Stretch last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
            if (last != null && next.from - last.to <= BREAK / factor) {
                merged.set(merged.size() - 1, new Stretch(last.from, Math.max(last.to, next.to)));
            } else {
                merged.add(next);
            }
        }
        return merged;
    }

    private static double width(List<Stretch> stretches, double factor) {
        return stretches.stream().mapToDouble(Stretch::length).sum() * factor + (stretches.size() - 1) * BREAK;
    }

    private static BrokenLine of(List<Stretch> stretches, double factor) {
        List<Piece> pieces = new ArrayList<>();
        double paper = 0;
        for (Stretch stretch : stretches) {
            pieces.add(new Piece(stretch.from, stretch.to, paper));
            paper += stretch.length() * factor + BREAK;
        }
        return new BrokenLine(factor, List.copyOf(pieces));
    }

    /** Where a place of the part lies on paper; one that is left out lies in its break. */
    double paper(double x) {
        Piece before = pieces.get(0);
        for (Piece piece : pieces) {
            if (piece.holds(x)) {
                return piece.paper + (x - piece.from) * factor;
            }
            before = piece.to < x ? piece : before;
        }
        return x < pieces.get(0).from ? pieces.get(0).paper - (pieces.get(0).from - x) * factor
                : x > pieces.get(pieces.size() - 1).to ? before.paper + (x - before.from) * factor
                : before.paper + (before.to - before.from) * factor + BREAK / 2;
    }

    /** From the first to the last piece on paper. */
    double width() {
        Piece last = pieces.get(pieces.size() - 1);
        return last.paper + (last.to - last.from) * factor;
    }
}
