// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

/** Collects runs of places, joined across the ends of laps. */
final class Collector implements LapSink {
    private final long join;
    private final SpansBuilder found;

    /**
     * @param join the spacing within a run
     * @param most the most runs
     */
    Collector(long join, int most) {
        this.join = join;
        this.found = new SpansBuilder(join, most);
    }

    @Override
    public void run(long first, long last) {
        found.add(first, last);
    }

    @Override
    public void alike(long base, long laps, long pitch, Spans residues) {
        if (residues.size() == 1 && residues.lowest() + pitch - residues.highest() <= join) {
            found.add(base + residues.lowest(), base + (laps - 1) * pitch + residues.highest());
        } else {
            LapSink.super.alike(base, laps, pitch, residues);
        }
    }

    /** The runs. */
    Spans build() {
        return found.build();
    }
}
