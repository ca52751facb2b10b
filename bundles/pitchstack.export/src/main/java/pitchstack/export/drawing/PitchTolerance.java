// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.math.BigInteger;
import java.util.Optional;
import pitchstack.analysis.part.PartReader;
import pitchstack.core.geometry.Side;
import pitchstack.core.stack.IndexRange;

/**
 * By how much the pitch over many teeth of a printed stage may be off, which follows from the tolerance that the file gives
 * for targets of its axis: at index i a pitch that is off by d moves the carriage by i·d, so the stages of an axis keep the
 * tolerance together where each has an equal share of it at its farthest index from 0.
 */
final class PitchTolerance {
    private PitchTolerance() {
    }

    /**
     * The tolerance as written, rounded down to what can be measured; nothing where the file gives none, where the lower row
     * is bought, and where less than that is left.
     */
    static Optional<String> of(AxisView axis, StageView stage, int teeth, Style style) {
        IndexRange indices = stage.spec().rows().indices();
        long farthest = Math.max(Math.abs((long) indices.first()), Math.abs((long) indices.last()));
        if (indices.isEmpty() || farthest == 0 || !PartReader.isPrinted(stage.stage(), Side.BASE)) {
            return Optional.empty();
        }
        BigInteger shared = BigInteger.valueOf(axis.spec().tolerance()).multiply(BigInteger.valueOf(teeth))
                .divide(BigInteger.valueOf(farthest).multiply(BigInteger.valueOf(axis.stages().size())));
        return style.tolerance(axis, shared.longValueExact());
    }
}
