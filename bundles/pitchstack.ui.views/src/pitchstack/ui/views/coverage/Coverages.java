// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.CoverageChange.Changed;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.coverage.Reach;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Wear;
import pitchstack.ui.views.coverage.Charted.Compared;
import pitchstack.ui.views.coverage.strip.Shares;

/** Works out what the view shows. Used by one job at a time, and once more by one that is being cancelled. */
final class Coverages {
    /** The axis prepared last, since often only the tolerance, or a selection, has changed. */
    private volatile Reach prepared;

    /**
     * What is to be shown.
     *
     * @param axis a sound axis
     * @param tolerance at least 0, in counts
     * @param supposed the axis with the supposed marks; empty where none is supposed
     * @param without the axis without the selected mark; empty where none is selected
     */
    record Wanted(AxisSpec axis, long tolerance, Optional<AxisSpec> supposed, Optional<AxisSpec> without) { }

    Outcome<Charted> chart(Wanted wanted, Progress progress) {
        Reach known = prepared;
        Outcome<Reach> reach = known != null && known.axis().equals(wanted.axis()) ? new Outcome.Done<>(known)
                : Reach.of(wanted.axis(), progress);
        if (reach instanceof Outcome.Done<Reach> done) {
            prepared = done.value();
        }
        return reach.then(r -> r.coverage(wanted.tolerance(), progress).then(now -> {
            var finest = r.finestStep(Wear.WORN, progress);
            Optional<Compared> supposed = wanted.supposed().flatMap(axis -> other(axis, wanted, progress))
                    .map(other -> supposed(now, other));
            Optional<Compared> cost = wanted.without().flatMap(axis -> other(axis, wanted, progress))
                    .map(other -> cost(other, now));
            return progress.isCancelled() ? new Outcome.Cancelled<>() : new Outcome.Done<>(new Charted(r, now,
                    new Shares(now.stretches()), now.summary(),
                    finest instanceof Outcome.Done<?> ? finest.get() : Optional.empty(), supposed, cost));
        }));
    }

    /** A coverage to compare with; none where it would take too much, which does not spoil the present one. */
    private static Optional<Coverage> other(AxisSpec axis, Wanted wanted, Progress progress) {
        Outcome<Coverage> other = Reach.of(axis, progress).then(reach -> reach.coverage(wanted.tolerance(), progress));
        return other instanceof Outcome.Done<Coverage> done ? Optional.of(done.value()) : Optional.empty();
    }

    private static Compared supposed(Coverage now, Coverage then) {
        CoverageChange change = CoverageChange.between(now, then);
        return new Compared(change, Shares.comparing(then.stretches(), change.lost()), then.summary());
    }

    private static Compared cost(Coverage without, Coverage now) {
        CoverageChange change = CoverageChange.between(without, now);
        List<Stretch> worse = Stream.concat(change.lost().stream(), change.wornOnly().stream())
                .sorted((a, b) -> Long.compare(a.low(), b.low())).map(Coverages::stretch).toList();
        return new Compared(change, new Shares(worse), without.summary());
    }

    private static Stretch stretch(Changed changed) {
        return new Stretch(changed.low(), changed.high(), changed.after());
    }
}
