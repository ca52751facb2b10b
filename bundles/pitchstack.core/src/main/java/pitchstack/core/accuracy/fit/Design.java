// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.fit;

import java.util.List;
import pitchstack.core.stack.Direction;

/**
 * The linear model of a run: reading − Σ nⱼ·pⱼ(T) = datum + Σ cⱼ·nⱼ·pⱼ(T) ± reversal/2. Columns: the datum, one for each
 * stage, and the reversal where the run has approaches from both sides.
 */
final class Design {
    private static final double HALF = 0.5;

    private final List<StageScale> stages;
    private final boolean reversal;

    private Design(List<StageScale> stages, boolean reversal) {
        this.stages = stages;
        this.reversal = reversal;
    }

    static Design of(List<StageScale> stages, List<Reading> readings) {
        return new Design(stages, readings.stream().anyMatch(r -> r.direction() == Direction.FORWARD)
                && readings.stream().anyMatch(r -> r.direction() == Direction.BACK));
    }

    boolean hasReversal() {
        return reversal;
    }

    /** The column of a stage. */
    static int column(int stage) {
        return 1 + stage;
    }

    int reversalColumn() {
        return 1 + stages.size();
    }

    int columns() {
        return 1 + stages.size() + (reversal ? 1 : 0);
    }

    double[] row(Reading reading) {
        double[] row = new double[columns()];
        row[0] = 1;
        for (int j = 0; j < stages.size(); j++) {
            row[column(j)] = stages.get(j).lengthM(reading.setting().index(j), reading.temperatureC());
        }
        if (reversal) {
            row[reversalColumn()] = switch (reading.direction()) {
                case FORWARD -> HALF;
                case BACK -> -HALF;
                case UNKNOWN -> 0;
            };
        }
        return row;
    }

    /** The reading less what the pitches say. */
    double deviationM(Reading reading) {
        double expected = 0;
        for (int j = 0; j < stages.size(); j++) {
            expected += stages.get(j).lengthM(reading.setting().index(j), reading.temperatureC());
        }
        return reading.positionM() - expected;
    }

    LeastSquares problem(List<Reading> readings) {
        return new LeastSquares(readings.stream().map(this::row).toArray(double[][]::new),
                readings.stream().mapToDouble(r -> 1 / (r.uncertaintyM() * r.uncertaintyM())).toArray());
    }
}
