// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.MeanEffort;
import pitchstack.core.coverage.StopChange;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.Shares;

/** What some teeth would cost, for a person. */
final class SupposedText {
    private final PrintWriter out;
    private final Mapped now;
    private final Supposed supposed;
    private final Scale scale;

    /**
     * @param out takes the text
     * @param now what is reached as it is
     * @param supposed what is supposed
     */
    SupposedText(PrintWriter out, Mapped now, Supposed supposed) {
        this.out = out;
        this.now = now;
        this.supposed = supposed;
        this.scale = now.axis().scale();
    }

    /** Writes the figures that would be, and what changes. */
    void write() {
        out.println();
        out.println("Supposed: " + supposed.words());
        if (now.coverage().stretches().isEmpty()) {
            return;
        }
        out.println();
        new CoverageText(out, supposed.mapped()).writeFigures();
        out.println();
        out.println("Lost: " + part(supposed.answer().change().lost()));
        out.println("Worn only from then on: " + part(supposed.answer().change().wornOnly()));
        if (!supposed.stops().isEmpty()) {
            writeTargets();
        }
        supposed.answer().mean().ifPresent(this::write);
        supposed.unread().forEach(out::println);
    }

    private String part(List<Changed> some) {
        if (some.isEmpty()) {
            return "nothing";
        }
        Changed largest = some.stream().max(Comparator.comparingLong(Changed::size)
                .thenComparing(Comparator.comparingLong(Changed::low).reversed())).orElseThrow();
        return Shares.of(CoverageChange.size(some), now.coverage().summary().travel()) + " of the travel, in " + some.size()
                + (some.size() == 1 ? " stretch" : " stretches, the longest") + " from "
                + TrueMinus.in(scale.format(largest.low()) + " to " + scale.format(largest.high()));
    }

    private void writeTargets() {
        List<Stop> lost = supposed.stops(StopChange::fails);
        long reached = supposed.reachedNow();
        out.println();
        out.println("Targets, each from where the stages stand: " + reached + " of " + supposed.stops().size()
                + " reached now, " + (reached - lost.size()) + " then");
        if (!lost.isEmpty()) {
            out.println("Lost: " + names(lost));
        }
        List<Stop> overWorn = supposed.stops(StopChange::turnsWorn);
        if (!overWorn.isEmpty()) {
            out.println("Over worn teeth from then on: " + names(overWorn));
        }
        if (reached > lost.size()) {
            long more = supposed.answer().extraMs();
            out.println("Effort of those reached both times: " + Wording.effort(supposed.effortMs(StopChange::now)) + " now, "
                    + Wording.effort(supposed.effortMs(StopChange::supposed)) + " then" + (more == 0 ? ""
                            : ", " + Wording.effort(Math.abs(more)) + (more > 0 ? " more" : " less")));
        }
    }

    /** A mean of many efforts is not worth more than a tenth of a second. */
    private void write(MeanEffort mean) {
        out.println("Mean effort to any multiple of " + scale.formatSize(mean.step()) + " reached both times: "
                + Wording.effort(Math.round(mean.nowMs() / 100) * 100) + " now, "
                + Wording.effort(Math.round(mean.supposedMs() / 100) * 100) + " then");
    }

    private String names(List<Stop> stops) {
        return stops.stream().map(stop -> (stop.name().isBlank() ? "" : "“" + stop.name() + "”, ")
                + TrueMinus.in(scale.format(stop.target()))).collect(Collectors.joining("; "));
    }
}
