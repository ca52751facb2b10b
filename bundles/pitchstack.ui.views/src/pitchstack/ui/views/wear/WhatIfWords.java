// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.MeanEffort;
import pitchstack.core.coverage.StopChange;
import pitchstack.core.coverage.Supposition;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;
import pitchstack.core.units.Scale;
import pitchstack.ui.views.coverage.CoverageWords;

/**
 * Puts the cost of marks into sentences.
 *
 * @param scale the scale of the axis
 * @param stops the list that was planned
 * @param isSupposed whether the marks are supposed; else those of the file
 */
record WhatIfWords(Scale scale, List<Stop> stops, boolean isSupposed) {
    /** What is lost, what becomes worn-only, and the extra effort, a line each. */
    String of(Supposition found) {
        String lost = stretches(found, found.change().lost(), "Lost: ");
        String worn = stretches(found, found.change().wornOnly(), "Only over worn teeth: ");
        String better = stretches(found, found.change().better(), "Better than before: ");
        return lost + "\n" + worn + (found.change().better().isEmpty() ? "" : "\n" + better) + "\n" + list(found)
                + found.mean().map(mean -> "\n" + mean(mean)).orElse("");
    }

    private String stretches(Supposition found, List<Changed> some, String what) {
        if (some.isEmpty()) {
            return what + "nothing.";
        }
        long travel = found.now().summary().travel();
        long size = CoverageChange.size(some);
        Changed largest = some.stream().max(Comparator.comparingLong(Changed::size)
                .thenComparing(Comparator.comparingLong(Changed::low).reversed())).orElseThrow();
        String share = travel == 0 ? "" : " (" + CoverageWords.percent((double) size / travel) + ")";
        return what + scale.formatSize(size) + share + (some.size() == 1
                ? " in 1 stretch, from " + scale.format(largest.low()) + "."
                : " in " + some.size() + " stretches, largest " + scale.formatSize(largest.size()) + ", at "
                        + scale.format(largest.low()) + ".");
    }

    private String list(Supposition found) {
        if (stops.isEmpty()) {
            return "The file has no targets to compare efforts by.";
        }
        List<StopChange> failing = found.stops().stream().filter(StopChange::fails).toList();
        long costlier = found.stops().stream().filter(stop -> stop.extraMs().orElse(0) != 0).count();
        long worn = found.stops().stream().filter(StopChange::turnsWorn).count();
        String failed = failing.isEmpty() ? "none is lost" : failing.size() + (failing.size() == 1 ? " is lost (" : " are lost (")
                + failing.stream().map(this::name).collect(Collectors.joining(", ")) + ")";
        return "Of " + count(stops.size()) + ", each set from here, " + failed + (worn == 0 ? "" : ", " + worn + " only over worn teeth")
                + (costlier == 0 ? "; no extra effort." : "; " + extra(found.extraMs()) + " in sum for " + costlier
                        + (costlier == 1 ? " other." : " others."));
    }

    private static String count(int targets) {
        return targets == 1 ? "1 target" : targets + " targets";
    }

    /** How a stop is called. */
    String name(StopChange stop) {
        String name = stops.get(stop.stop()).name();
        return name.isBlank() ? scale.format(stops.get(stop.stop()).target()) : "“" + name + "”";
    }

    /** An effort that may be less: {@code +14 s}. */
    static String extra(long ms) {
        return ms == 0 ? "0 s" : (ms < 0 ? "−" : "+") + Wording.effort(Math.abs(ms));
    }

    private String mean(MeanEffort mean) {
        return "A move from here to any multiple of " + scale.formatSize(mean.step()) + " takes "
                + Wording.effort(tenths(mean.supposedMs())) + " on average; " + (isSupposed ? "now " : "without the marks ")
                + Wording.effort(tenths(mean.nowMs())) + ".";
    }

    /** A mean of many efforts is not worth more than a tenth of a second. */
    private static long tenths(double ms) {
        return Math.round(ms / 100) * 100;
    }
}
