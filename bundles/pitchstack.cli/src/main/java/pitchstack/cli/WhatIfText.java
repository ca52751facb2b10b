// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.plan.Stop;
import pitchstack.core.plan.Wording;
import pitchstack.core.units.Scale;
import pitchstack.export.Shares;

/** What some teeth would cost, for a person. */
final class WhatIfText {
    private final PrintWriter out;
    private final Mapped now;
    private final WhatIf whatIf;
    private final Scale scale;

    /**
     * @param out takes the text
     * @param now what is reached as it is
     * @param whatIf what is supposed
     */
    WhatIfText(PrintWriter out, Mapped now, WhatIf whatIf) {
        this.out = out;
        this.now = now;
        this.whatIf = whatIf;
        this.scale = now.axis().scale();
    }

    /** Writes the figures that would be, and what changes. */
    void write() {
        out.println();
        out.println("Supposed: " + whatIf.words());
        if (now.coverage().stretches().isEmpty()) {
            return;
        }
        out.println();
        new CoverageText(out, whatIf.supposed()).writeFigures();
        out.println();
        out.println("Lost: " + part(whatIf.change().lost()));
        out.println("Worn only from then on: " + part(whatIf.change().wornOnly()));
        whatIf.effort().ifPresent(this::write);
        whatIf.unread().forEach(out::println);
    }

    private String part(List<Changed> some) {
        if (some.isEmpty()) {
            return "nothing";
        }
        Changed largest = some.stream().max(Comparator.comparingLong(Changed::size)
                .thenComparing(Comparator.comparingLong(Changed::low).reversed())).orElseThrow();
        return Shares.of(CoverageChange.size(some), now.coverage().summary().travel()) + " of the travel, in " + some.size()
                + (some.size() == 1 ? " stretch" : " stretches, the longest") + " from " + scale.format(largest.low()) + " to "
                + scale.format(largest.high());
    }

    private void write(EffortChange effort) {
        out.println();
        out.println("Targets: " + effort.reached() + " of " + effort.stops() + " reached now, "
                + (effort.reached() - effort.lost().size()) + " then");
        if (!effort.lost().isEmpty()) {
            out.println("Lost: " + names(effort.lost()));
        }
        if (!effort.overWorn().isEmpty()) {
            out.println("Over worn teeth from then on: " + names(effort.overWorn()));
        }
        if (effort.reached() == effort.lost().size()) {
            return;
        }
        long more = effort.supposedMs() - effort.nowMs();
        out.println("Effort of those reached both times, in the given order: " + Wording.effort(effort.nowMs()) + " now, "
                + Wording.effort(effort.supposedMs()) + " then" + (more == 0 ? ""
                        : ", " + Wording.effort(Math.abs(more)) + (more > 0 ? " more" : " less")));
    }

    private String names(List<Stop> stops) {
        return stops.stream().map(stop -> (stop.name().isBlank() ? "" : "“" + stop.name() + "”, ")
                + scale.format(stop.target())).collect(Collectors.joining("; "));
    }
}
