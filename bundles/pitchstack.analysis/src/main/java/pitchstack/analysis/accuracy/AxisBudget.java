// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import pitchstack.core.accuracy.Watch;
import pitchstack.core.accuracy.fit.Allowed;
import pitchstack.core.accuracy.total.SettingBudget;
import pitchstack.core.accuracy.total.WorstSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.Setting;

/** Budgets of an axis: of a setting, of the worst over the travel, and along the travel. */
public final class AxisBudget {
    private final AccuracyReading reading;
    private final AxisSpec spec;
    private final Allowed allowed;

    /** Of an axis as read. */
    public AxisBudget(AccuracyReading reading) {
        this.reading = reading;
        spec = reading.spec();
        allowed = new Allowed(spec);
    }

    /** What was read, with the assumptions. */
    public AccuracyReading reading() {
        return reading;
    }

    /**
     * The figures of a setting.
     *
     * @throws IllegalArgumentException with a sentence if the rows of a stage do not meet at its index
     */
    public SettingFigures at(Setting setting) {
        return new SettingFigures(setting, spec.position(setting), SettingBudget.of(reading.accuracy(), setting).result());
    }

    /** Whether a setting is in range, over no barred teeth, and within stops and shift limits. */
    public boolean allows(Setting setting) {
        return allowed.allows(setting);
    }

    /**
     * The allowed setting of largest uncertainty. Takes up to a few seconds.
     *
     * @param home one to start from, where stages stand
     * @return nothing where the watch ended it
     */
    public Optional<Worst> worst(Setting home, Watch watch) {
        return WorstSetting.of(reading.accuracy(), home, allowed::allows, watch)
                .map(worst -> new Worst(at(worst.setting()), worst.exhaustive()));
    }

    /**
     * The worst over the travel.
     *
     * @param figures of that setting
     * @param exhaustive whether every setting was looked at; otherwise no change of one stage alone makes it worse
     */
    public record Worst(SettingFigures figures, boolean exhaustive) { }

    /** The stage that travels farthest by itself, from 0. */
    public int longestStage() {
        int longest = 0;
        for (int j = 1; j < spec.stages().size(); j++) {
            longest = wayM(j) > wayM(longest) ? j : longest;
        }
        return longest;
    }

    private double wayM(int stage) {
        IndexRange range = spec.stages().get(stage).rows().indices();
        return range.isEmpty() ? 0 : ((double) range.last() - range.first()) * reading.accuracy().stages().get(stage).pitchM();
    }

    /**
     * How error and uncertainty run along the travel: one stage over its range while the others stand where they do.
     *
     * @param home where the other stages stand
     * @param stage the one that moves, from 0
     * @param most how many points at most, at least 2; fewer where fewer settings are allowed
     */
    public List<TravelPoint> along(Setting home, int stage, int most) {
        IndexRange range = spec.stages().get(stage).rows().indices();
        List<TravelPoint> points = new ArrayList<>();
        TreeSet<Integer> indices = new TreeSet<>();
        for (int i = 0; i < most && !range.isEmpty(); i++) {
            indices.add((int) (range.first() + Math.round(((double) range.last() - range.first()) * i / (most - 1))));
        }
        for (int index : indices) {
            Setting setting = home.with(stage, index);
            if (allowed.allows(setting)) {
                points.add(new TravelPoint(at(setting), drawnErrorM(setting)));
            }
        }
        return points;
    }

    /**
     * What the corrections of the file add to a setting: how far off it would be believed to stand by the pitches as drawn.
     */
    private double drawnErrorM(Setting setting) {
        double error = 0;
        for (int j = 0; j < spec.stages().size(); j++) {
            long drawn = Math.multiplyExact(spec.stages().get(j).nominalPitch(), (long) setting.index(j));
            error += Si.of(spec.stages().get(j).offset(setting.index(j)) - drawn, spec.scale());
        }
        return error;
    }
}
