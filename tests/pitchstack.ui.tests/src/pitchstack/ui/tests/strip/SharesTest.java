// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.strip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import pitchstack.core.coverage.CoverageChange;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.ui.views.coverage.strip.Column;
import pitchstack.ui.views.coverage.strip.Shares;
import pitchstack.ui.views.coverage.strip.Sight;

/** Shares of ranges, against counting position by position. */
class SharesTest {
    private static final double ROUNDING = 1e-12;

    private final Random random = new Random(20260115);

    @Test
    void agreesWithCountingOnRandomTravels() {
        for (int run = 0; run < 300; run++) {
            List<Stretch> stretches = randomStretches();
            Shares shares = new Shares(stretches);
            for (int range = 0; range < 60; range++) {
                long from = random.nextInt(80) - 20;
                long to = from + random.nextInt(random.nextBoolean() ? 3 : 50);
                String where = "run " + run + " of seed 20260115, " + from + " to " + to + " in " + stretches;
                assertSame(counted(stretches, from, to), shares.between(from, to), where);
            }
        }
    }

    @Test
    void countsAWholeTravelAsFarAsLongsGo() {
        long half = 1L << 61;
        Shares shares = new Shares(List.of(new Stretch(-half, -1, Reached.CLEAN), new Stretch(0, half, Reached.NOT)));
        assertSame(new Column(0.5, 0, 0.5), shares.between(-half, half), "half of it");
    }

    @Test
    void tellsOneStretchFromSeveralInOneColumn() {
        Shares shares = new Shares(List.of(new Stretch(0, 9, Reached.CLEAN), new Stretch(10, 19, Reached.WORN)));
        Column[] columns = shares.columns(Sight.all(0, 20, 1), 4);
        assertEquals(Column.of(Reached.CLEAN), columns[0]);
        assertEquals(Column.of(Reached.CLEAN), columns[1]);
        assertEquals(Column.of(Reached.WORN), columns[2]);
        assertEquals(Column.of(Reached.WORN), columns[3]);
        Column one = shares.columns(Sight.all(0, 20, 1), 1)[0];
        assertTrue(one.isMixed());
        assertSame(new Column(0.5, 0.5, 0), one, "half each");
        assertFalse(columns[0].isMixed());
        assertFalse(Column.OUTSIDE.isMixed());
    }

    /** The reads of two binary searches a column or so, on a list that counts them after it was taken in. */
    @Test
    void readsNoListWhileItDraws() {
        int[] reads = {0};
        Shares shares = new Shares(new AbstractList<>() {
            @Override
            public Stretch get(int i) {
                reads[0]++;
                return new Stretch(10L * i, 10L * i + 9, Reached.values()[i % 3]);
            }

            @Override
            public int size() {
                return 30_000;
            }
        });
        int once = reads[0];
        Column[] columns = shares.columns(Sight.all(0, 300_000, 1), 1000);
        assertEquals(once, reads[0]);
        assertSame(new Column(1 / 3.0, 1 / 3.0, 1 / 3.0), columns[500], "30 stretches of 10 positions in a column of 300");
    }

    private static void assertSame(Column expected, Column actual, String where) {
        assertEquals(expected.clean(), actual.clean(), ROUNDING, where);
        assertEquals(expected.worn(), actual.worn(), ROUNDING, where);
        assertEquals(expected.not(), actual.not(), ROUNDING, where);
    }

    private List<Stretch> randomStretches() {
        List<Stretch> stretches = new ArrayList<>();
        long next = random.nextInt(20) - 10;
        int count = random.nextInt(12);
        for (int i = 0; i < count; i++) {
            long high = next + random.nextInt(6);
            stretches.add(new Stretch(next, high, Reached.values()[random.nextInt(3)]));
            next = high + 1 + (random.nextInt(5) == 0 ? random.nextInt(4) : 0);
        }
        return stretches;
    }

    private static Column counted(List<Stretch> stretches, long from, long to) {
        double[] counts = new double[3];
        double all = 0;
        for (long position = from; position <= to; position++) {
            for (Stretch stretch : stretches) {
                if (stretch.contains(position)) {
                    counts[stretch.reached().ordinal()]++;
                    all++;
                }
            }
        }
        return all == 0 ? Column.OUTSIDE : new Column(counts[0] / all, counts[1] / all, counts[2] / all);
    }

    /** Of 0 to 99 the half from 50 is not reached, and of that 60 to 69 would be. */
    @Test
    void tellsWhatIsLostApart() {
        Shares shares = Shares.comparing(List.of(new Stretch(0, 49, Reached.CLEAN), new Stretch(50, 99, Reached.NOT)),
                List.of(new CoverageChange.Changed(60, 69, Reached.WORN, Reached.NOT)));
        assertEquals(new Column(0.5, 0, 0.4, 0.1), shares.between(0, 99));
        assertEquals(Column.LOST, shares.between(61, 69));
        assertEquals(new Column(0, 0, 0.5, 0.5), shares.between(65, 74));
        assertEquals(Column.of(Reached.NOT), shares.between(70, 99));
    }
}
