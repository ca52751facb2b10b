// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import pitchstack.core.plan.Progress;

/** Parts of which the making is watched. */
class StoppedPartTest {
    /** Counts how often it is asked, and ends the work after so many times. */
    private static final class Watcher implements Progress {
        private final int most;
        private final List<Double> shares = new ArrayList<>();

        Watcher(int most) {
            this.most = most;
        }

        @Override
        public boolean isCancelled() {
            return shares.size() >= most;
        }

        @Override
        public void done(long part, long of) {
            shares.add((double) part / of);
        }
    }

    private static Optional<byte[]> made(PartFormat format, Progress progress) {
        return PartFile.bytes(SampleRows.both(), format, progress);
    }

    @ParameterizedTest
    @EnumSource(value = PartFormat.class, names = {"THREE_MF", "STL"})
    void tellsHowFarItIsFromTheBeginToTheEnd(PartFormat format) {
        Watcher watcher = new Watcher(Integer.MAX_VALUE);
        assertArrayEquals(made(format, Progress.NONE).orElseThrow(), made(format, watcher).orElseThrow());
        assertEquals(0, watcher.shares.get(0));
        assertEquals(1, watcher.shares.get(watcher.shares.size() - 1));
        // Two rows are sent twice, in pieces of a few teeth; clamping holes and numbers keep some together.
        int fewest = 2 * 2 * SampleRows.TEETH / 10;
        assertTrue(watcher.shares.size() > fewest, () -> watcher.shares.toString());
        assertEquals(watcher.shares.stream().sorted().toList(), watcher.shares);
    }

    @ParameterizedTest
    @EnumSource(value = PartFormat.class, names = {"THREE_MF", "STL"})
    void endsWithoutAFileWhereverItIsStopped(PartFormat format) {
        Watcher all = new Watcher(Integer.MAX_VALUE);
        made(format, all);
        for (int most = 0; most < all.shares.size(); most += 7) {
            Watcher watcher = new Watcher(most);
            assertTrue(made(format, watcher).isEmpty());
            // Asked once more at the end of the pass that it broke off, and once at that of the object.
            assertTrue(watcher.shares.size() <= most + 2, most + " " + watcher.shares.size());
        }
    }
}
