// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The cross-cut fence worked out by hand, in millionths of an inch: a teeth of 1/4 in and b teeth of 0.24 in, from 0 to 96 in.
 * The rider of 24 teeth must keep 12 engaged, so a goes from −12 to 396 and b from −12 to 12. Base teeth 100 and 101 of the
 * rack are worn, so that a from 77 to 101 stands on them. Rack: 12 s to release, 0.5 s a tooth; fine row: 6 s and 1.5 s.
 */
final class FenceByHand {
    /** The setting in the file: 12 in. */
    static final Place START = new Place(48, 0);

    private static final long INCH = 1_000_000;

    private FenceByHand() {
    }

    /** Teeth of the rack and of the fine row. */
    record Place(int a, int b) {
        long position() {
            return a * INCH / 4 + b * INCH * 24 / 100;
        }

        boolean isWorn() {
            return a >= 100 - 23 && a <= 101;
        }
    }

    /** A line of the list. */
    record Stop(long position, long tolerance) { }

    /** Reads the list, whose cells are plain here: positions like {@code 30 1/4}, tolerances like {@code 1/64}. */
    static List<Stop> stops(Path list) throws IOException {
        List<Stop> stops = new ArrayList<>();
        for (String line : Files.readAllLines(list).stream().skip(1).toList()) {
            String[] cells = line.split(",");
            stops.add(new Stop(millionths(cells[1]), millionths(cells[2])));
        }
        return stops;
    }

    private static long millionths(String text) {
        long sum = 0;
        for (String part : text.split(" ")) {
            String[] fraction = part.split("/");
            sum += Math.round(Double.parseDouble(fraction[0]) * INCH)
                    / (fraction.length == 1 ? 1 : Long.parseLong(fraction[1]));
        }
        return sum;
    }

    /** Where a stop can be set: clean, or where that is not possible, over worn teeth. */
    static List<Place> places(Stop stop) {
        List<Place> all = new ArrayList<>();
        for (int a = -12; a <= 396; a++) {
            for (int b = -12; b <= 12; b++) {
                Place place = new Place(a, b);
                boolean inTravel = place.position() >= 0 && place.position() <= 96 * INCH;
                if (inTravel && Math.abs(place.position() - stop.position()) <= stop.tolerance()) {
                    all.add(place);
                }
            }
        }
        List<Place> clean = all.stream().filter(place -> !place.isWorn()).toList();
        return clean.isEmpty() ? all : clean;
    }

    static long effortMs(Place from, Place to) {
        int a = Math.abs(to.a() - from.a());
        int b = Math.abs(to.b() - from.b());
        return (a == 0 ? 0 : 12_000 + 500 * a) + (b == 0 ? 0 : 6_000 + 1_500 * b);
    }

    /** The place that is planned for a stop by itself. */
    static Place cheapest(Place from, Stop stop) {
        return places(stop).stream().min(Comparator.comparingLong((Place place) -> effortMs(from, place))
                .thenComparingLong(place -> Math.abs(place.position() - stop.position()))
                .thenComparingLong(place -> place.position() - stop.position())
                .thenComparingInt(Place::a).thenComparingInt(Place::b)).orElseThrow();
    }
}
