// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.total;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import pitchstack.core.accuracy.Watch;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;

/**
 * The setting of largest uncertainty. Up to {@link #ALL} combinations of indices every one is looked at; beyond, stages are
 * led one after the other to where it is largest, from every corner of the ranges, which finds a setting that no change of
 * one stage makes worse.
 *
 * @param setting where
 * @param combinedM the combined standard uncertainty there
 * @param exhaustive whether every setting was looked at
 */
public record WorstSetting(Setting setting, double combinedM, boolean exhaustive) {
    /** So many budgets take a second or two. */
    static final int ALL = 10_000;
    private static final int MOST_CORNERS = 64;

    /**
     * Searches.
     *
     * @param allowed which settings count; the home setting does
     * @return nothing where the watch ended it
     */
    public static Optional<WorstSetting> of(AxisAccuracy axis, Setting home, Predicate<Setting> allowed, Watch watch) {
        Search search = new Search(axis, allowed, watch);
        long count = 1;
        for (StageAccuracy stage : axis.stages()) {
            count = Math.min(ALL + 1L, count * Math.max(1, stage.rows().indices().count()));
        }
        boolean all = count <= ALL;
        boolean done = all ? search.all(home, 0, count) : search.climb(home);
        return done ? Optional.of(new WorstSetting(search.worst, search.most, all)) : Optional.empty();
    }

    /** One search and the worst it has met. */
    private static final class Search {
        private final AxisAccuracy axis;
        private final Predicate<Setting> allowed;
        private final Watch watch;
        private Setting worst;
        private double most = -1;
        private long looked;

        Search(AxisAccuracy axis, Predicate<Setting> allowed, Watch watch) {
            this.axis = axis;
            this.allowed = allowed;
            this.watch = watch;
        }

        private IndexRange range(int stage) {
            return axis.stages().get(stage).rows().indices();
        }

        private double look(Setting setting) {
            looked++;
            double combined = allowed.test(setting) ? SettingBudget.of(axis, setting).combined() : -1;
            if (combined > most) {
                most = combined;
                worst = setting;
            }
            return combined;
        }

        boolean all(Setting base, int stage, long of) {
            if (stage == axis.stages().size()) {
                look(base);
                return watch.goOn(looked, of);
            }
            for (int n = range(stage).first(); n <= range(stage).last(); n++) {
                if (!all(base.with(stage, n), stage + 1, of)) {
                    return false;
                }
            }
            return true;
        }

        boolean climb(Setting home) {
            List<Setting> starts = corners(home);
            for (int i = 0; i < starts.size(); i++) {
                int part = i;
                if (!climbFrom(starts.get(i), () -> watch.goOn(part, starts.size()))) {
                    return false;
                }
            }
            return watch.goOn(starts.size(), starts.size());
        }

        private List<Setting> corners(Setting home) {
            List<Setting> corners = new ArrayList<>(List.of(home));
            for (int j = 0; j < axis.stages().size() && corners.size() <= MOST_CORNERS / 2; j++) {
                for (Setting corner : List.copyOf(corners)) {
                    corners.add(corner.with(j, range(j).first()));
                    corners.add(corner.with(j, range(j).last()));
                }
            }
            corners.removeIf(corner -> !allowed.test(corner));
            return corners;
        }

        private boolean climbFrom(Setting start, BooleanSupplier goOn) {
            Setting here = start;
            double height = look(here);
            boolean higher = true;
            while (higher) {
                higher = false;
                for (int j = 0; j < axis.stages().size(); j++) {
                    for (int n : tries(j, here.index(j))) {
                        double found = look(here.with(j, n));
                        if (found > height) {
                            here = here.with(j, n);
                            height = found;
                            higher = true;
                        }
                    }
                    if (!goOn.getAsBoolean()) {
                        return false;
                    }
                }
            }
            return true;
        }

        /** The ends, the neighbours, and a few between here and the ends. */
        private int[] tries(int stage, int here) {
            IndexRange range = range(stage);
            return new int[] {range.first(), range.last(), range.clamp(here - 1), range.clamp(here + 1),
                (range.first() + here) / 2, (range.last() + here) / 2, (3 * range.first() + here) / 4,
                (3 * range.last() + here) / 4};
        }
    }
}
