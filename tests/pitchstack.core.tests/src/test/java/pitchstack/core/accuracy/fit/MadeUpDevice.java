// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import pitchstack.core.Stacks;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;

/** A device whose truth is known: a rack under a printed 5/4.9 mm pair, with pitches off by parts in a thousand. */
final class MadeUpDevice {
    static final List<StageScale> STAGES = List.of(new StageScale("rack", 2.54e-3, 11.5e-6),
            new StageScale("lower", 5e-3, 68e-6), new StageScale("upper", 4.9e-3, 68e-6));
    static final AxisSpec AXIS = Stacks.axis(Stacks.stage("rack", 254 * Stacks.MM / 100, 0, 200),
            Stacks.stage("lower", 5 * Stacks.MM, -10, 10), Stacks.stage("upper", 49 * Stacks.MM / 10, -10, 10));
    static final Setting HOME = Setting.zero(3);

    final double[] corrections;
    final double datumM;
    final double reversalM;
    private final Random random;
    private final double scatterM;
    private final double instrumentScale;
    private final Map<Setting, Double> settingErrorsM = new HashMap<>();
    private double settingDeviationM;

    MadeUpDevice(long seed, double scatterM, double instrumentScaleUncertainty) {
        random = new Random(seed);
        corrections = new double[] {random.nextGaussian() * 20e-6, random.nextGaussian() * 1e-3, random.nextGaussian() * 1e-3};
        datumM = random.nextGaussian() * 1e-3;
        reversalM = random.nextGaussian() * 5e-6;
        instrumentScale = random.nextGaussian() * instrumentScaleUncertainty;
        this.scatterM = scatterM;
    }

    /** The same device whose every setting stands off by an error of its own that comes back at each visit. */
    MadeUpDevice withSettingErrors(double deviationM) {
        settingDeviationM = deviationM;
        return this;
    }

    private double settingErrorM(Setting setting) {
        return settingErrorsM.computeIfAbsent(setting, any -> random.nextGaussian() * settingDeviationM);
    }

    /** What an instrument would show, at 20 °C unless said otherwise. */
    Reading read(Setting setting, Direction direction, double temperatureC, double uncertaintyM) {
        double x = datumM;
        for (int j = 0; j < STAGES.size(); j++) {
            StageScale stage = STAGES.get(j);
            x += setting.index(j) * stage.pitchM() * (1 + corrections[j]) * (1 + stage.expansionPerK() * (temperatureC - 20));
        }
        x += direction == Direction.FORWARD ? reversalM / 2 : -reversalM / 2;
        x += settingDeviationM > 0 ? settingErrorM(setting) : 0;
        double shown = x * (1 + instrumentScale) + random.nextGaussian() * scatterM;
        return new Reading(setting, shown, direction, uncertaintyM, temperatureC);
    }

    List<Reading> run(List<MeasuringPlan.Line> plan) {
        List<Reading> readings = new ArrayList<>();
        plan.forEach(line -> readings.add(read(line.setting(), line.direction(), 20, 1e-6)));
        return readings;
    }

    static PitchFit fit(List<Reading> readings, FitOptions options) {
        return (PitchFit) PitchFit.of(STAGES, readings, options);
    }
}
