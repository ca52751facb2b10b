// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.ToLongFunction;
import java.util.stream.Collectors;
import pitchstack.cli.Mapped.Counted;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.FinestStep;
import pitchstack.core.coverage.GridCoverage;
import pitchstack.core.coverage.Reached;
import pitchstack.core.units.Scale;
import pitchstack.core.units.TrueMinus;
import pitchstack.export.ReachedWords;
import pitchstack.export.Shares;

/** A coverage for a person. */
final class CoverageText {
    /** Missed positions listed one by one; the file lists all. */
    static final int MOST_MISSED = 10;

    private final PrintWriter out;
    private final Mapped mapped;
    private final Scale scale;

    /**
     * @param out takes the text
     * @param mapped what is to be told
     */
    CoverageText(PrintWriter out, Mapped mapped) {
        this.out = out;
        this.mapped = mapped;
        this.scale = mapped.axis().scale();
    }

    /** Writes the figures, with the title of the stack above them. */
    void write(String title) {
        out.println(heading(title, mapped));
        if (mapped.coverage().stretches().isEmpty()) {
            out.println("Nothing can be set: no setting keeps the rows, stops and limits.");
            return;
        }
        out.println("Travel: " + range(lowest(), highest()));
        out.println();
        writeFigures();
    }

    /** Writes the figures alone. */
    void writeFigures() {
        CoverageSummary summary = mapped.coverage().summary();
        for (Reached reached : Reached.values()) {
            out.println(capitalised(ReachedWords.of(reached)) + ": " + Shares.of(summary, reached) + " of the travel");
        }
        out.println(summary.largestGap().map(gap -> "Gaps: " + summary.gaps() + ", the largest "
                + scale.formatSize(gap.size()) + " long, from " + range(gap.low(), gap.high())).orElse("Gaps: none"));
        out.println("Finest step everywhere: " + overBoth(FinestStep::spacing));
        out.println("Tolerance that leaves no gap: " + overBoth(FinestStep::tolerance));
        mapped.grid().ifPresent(this::write);
        mapped.counted().ifPresent(this::write);
    }

    /** What is mapped, in one line. */
    static String heading(String title, Mapped mapped) {
        return title + ", axis “" + mapped.axis().name() + "”, tolerance "
                + mapped.axis().scale().formatSize(mapped.coverage().tolerance());
    }

    private long lowest() {
        return mapped.coverage().stretches().get(0).low();
    }

    private long highest() {
        return mapped.coverage().stretches().get(mapped.coverage().stretches().size() - 1).high();
    }

    private String range(long low, long high) {
        return TrueMinus.in(scale.format(low) + " to " + scale.format(scale.wrap(high)));
    }

    private String overBoth(ToLongFunction<FinestStep> figure) {
        String clean = size(mapped.clean(), figure);
        String usable = size(mapped.usable(), figure);
        return clean.equals(usable) ? usable : clean + " over clean teeth, " + usable + " over worn ones too";
    }

    private String size(Optional<FinestStep> finest, ToLongFunction<FinestStep> figure) {
        return finest.map(step -> scale.formatSize(figure.applyAsLong(step))).orElse("none");
    }

    private void write(Counted counted) {
        out.println();
        out.println("Settings that reach " + TrueMinus.in(scale.format(counted.position())) + ": " + counted.ways().clean()
                + " over clean teeth, " + counted.ways().worn() + " over worn ones");
    }

    private void write(GridCoverage grid) {
        out.println();
        out.println("Multiples of " + scale.formatSize(grid.step()) + ": " + grid.cells() + " inside the travel");
        for (Reached reached : Reached.values()) {
            out.println("  " + ReachedWords.of(reached) + ": " + grid.count(reached));
        }
        long[] missed = mapped.missed(MOST_MISSED);
        if (missed.length > 0) {
            out.println((grid.count(Reached.NOT) > missed.length ? "First " + missed.length + " missed: " : "Missed: ")
                    + TrueMinus.in(Arrays.stream(missed).mapToObj(scale::format).collect(Collectors.joining(", "))));
        }
    }

    private static String capitalised(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
