// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Lists every setting in some windows, whatever the moves to them cost. One object serves one list. */
final class SettingLister {
    /** |error|, then fewer worn stages, then below the target first, then the smaller indices. */
    private static final Comparator<Candidate> BEST_FIRST = Comparator.comparingLong(Candidate::distance)
            .thenComparingInt(Candidate::worn).thenComparingLong(Candidate::error)
            .thenComparing(Candidate::indices, Arrays::compare);

    private final SearchSpace space;
    private final int most;
    private final int[] indices;
    private final List<Candidate> found = new ArrayList<>();
    private Window window;

    private SettingLister(SearchSpace space, int stages, int most) {
        this.space = space;
        this.most = most;
        this.indices = new int[stages];
    }

    /**
     * Lists settings.
     *
     * @param space where
     * @param windows windows that share no place
     * @param stages how many stages the axis has
     * @param most the most settings to list
     * @return the settings, those of the smallest errors first, their efforts 0; empty if there would be more
     */
    static Optional<List<Candidate>> list(SearchSpace space, List<Window> windows, int stages, int most) {
        SettingLister lister = new SettingLister(space, stages, most);
        if (!space.isEmpty()) {
            for (Window window : windows) {
                lister.window = window;
                lister.walk(0, space.datum, 0);
            }
        }
        if (lister.found.size() > most) {
            return Optional.empty();
        }
        lister.found.sort(BEST_FIRST);
        return Optional.of(lister.found);
    }

    /** Whether there is any setting in some windows. */
    static boolean isAny(SearchSpace space, List<Window> windows, int stages) {
        return list(space, windows, stages, 0).isEmpty();
    }

    private void walk(int level, long base, int worn) {
        if (!space.canMeet(level, base, window.low(), window.high())) {
            return;
        }
        if (level == space.outer.length) {
            scan(base, worn);
            return;
        }
        StageTable table = space.outer[level];
        int last = space.last(level, base, window.high());
        for (int n = space.first(level, base, window.low()); n <= last && found.size() <= most; n++) {
            indices[table.stage] = n;
            if (space.allows(level, indices)) {
                walk(level + 1, base + table.offset(n), worn + table.worn(n));
            }
        }
    }

    private void scan(long base, int worn) {
        Combinations list = space.list;
        long high = window.high() - base;
        for (int g = list.firstAtLeast(window.low() - base); g < list.groups() && list.offset[g] <= high; g++) {
            long place = base + list.offset[g];
            for (int k = list.start[g]; k < list.start[g + 1] && found.size() <= most; k++) {
                list.copyIndices(list.entry[k], indices);
                if (space.keepsLimits(space.outer.length, indices)) {
                    found.add(new Candidate(place, place - window.center(), 0, worn + list.worn(list.entry[k]),
                            indices.clone()));
                }
            }
        }
    }
}
