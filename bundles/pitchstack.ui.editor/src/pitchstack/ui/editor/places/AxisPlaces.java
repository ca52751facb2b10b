// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.editor.places;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.IndexRange;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.ToothSpan;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.Scale;

/**
 * Where the bodies and rows of an axis stand in one setting.
 *
 * <p>Body 0 is the base and body j is moved by stage j − 1. The file does not say where on a body its upper row lies
 * over its lower one, and no position depends on it; here every stage is drawn centred over the one below when all
 * indices are 0. The reference of a body is the middle of its rider row, and the carriage's reference stands at the
 * carriage's position.
 *
 * @param bodies from the base up to the carriage, one more than there are stages
 * @param stages the rows of each stage
 * @param reach everything that any body can ever cover, the present setting included; never empty
 */
public record AxisPlaces(List<Body> bodies, List<Rows> stages, Extent reach) {
    /**
     * A body.
     *
     * @param reference its reference place
     * @param extent what it covers: its rows, at least
     */
    public record Body(double reference, Extent extent) { }

    /**
     * The rows of a stage.
     *
     * @param base the row below
     * @param rider the row on the underside of the moved body
     * @param engagedBase the base teeth that are engaged
     * @param engagedRider the rider teeth that are engaged
     */
    public record Rows(RowPlace base, RowPlace rider, ToothSpan engagedBase, ToothSpan engagedRider) { }

    /** Copies the lists. */
    public AxisPlaces {
        bodies = List.copyOf(bodies);
        stages = List.copyOf(stages);
    }

    /**
     * The places of one setting.
     *
     * @param spec the axis, right or wrong: a pitch or a number of teeth below 0 counts as 0
     * @param setting one index a stage, in range or not
     */
    public static AxisPlaces of(AxisSpec spec, Setting setting) {
        double[] references = references(spec, setting);
        List<Rows> rows = new ArrayList<>();
        for (int j = 0; j < spec.stages().size(); j++) {
            rows.add(rows(spec.stages().get(j), setting.index(j), references[j], references[j + 1]));
        }
        List<Body> bodies = new ArrayList<>();
        for (int j = 0; j < references.length; j++) {
            bodies.add(new Body(references[j], extent(rows, j, references[j])));
        }
        return new AxisPlaces(bodies, rows, reach(spec, setting, bodies));
    }

    private static double[] references(AxisSpec spec, Setting setting) {
        double[] references = new double[spec.stages().size() + 1];
        references[0] = spec.datum();
        for (int j = 0; j < spec.stages().size(); j++) {
            references[j + 1] = references[j] + setting.index(j) * pitch(spec.stages().get(j));
        }
        return references;
    }

    private static Rows rows(StageSpec stage, int index, double below, double moved) {
        RowPair pair = stage.rows();
        double pitch = pitch(stage);
        double halfRider = Math.max(0, pair.rider().teeth()) * pitch / 2;
        RowPlace base = new RowPlace(below - halfRider - pair.start() * pitch, pitch, Math.max(0, pair.base().teeth()));
        RowPlace rider = new RowPlace(moved - halfRider, pitch, Math.max(0, pair.rider().teeth()));
        return new Rows(base, rider, pair.engagedBase(index), pair.engagedRider(index));
    }

    private static Extent extent(List<Rows> rows, int body, double reference) {
        Extent extent = new Extent(reference, reference);
        if (body > 0) {
            extent = extent.union(rows.get(body - 1).rider().extent());
        }
        if (body < rows.size()) {
            Extent base = rows.get(body).base().extent();
            extent = body == 0 ? base : extent.union(base);
        }
        return extent;
    }

    private static Extent reach(AxisSpec spec, Setting setting, List<Body> bodies) {
        Extent reach = bodies.get(0).extent();
        double lowest = 0;
        double highest = 0;
        for (int j = 0; j < spec.stages().size(); j++) {
            StageSpec stage = spec.stages().get(j);
            IndexRange indices = stage.rows().indices();
            int index = setting.index(j);
            lowest += pitch(stage) * (indices.isEmpty() ? index : Math.min(index, indices.first()));
            highest += pitch(stage) * (indices.isEmpty() ? index : Math.max(index, indices.last()));
            Body moved = bodies.get(j + 1);
            Extent atZero = moved.extent().shift(spec.datum() - moved.reference());
            reach = reach.union(atZero.shift(lowest)).union(atZero.shift(highest));
        }
        double least = leastReach(spec.scale());
        return reach.length() >= least ? reach : new Extent(reach.middle() - least / 2, reach.middle() + least / 2);
    }

    /** So that an axis without teeth still has a ruler: 10 mm, or a degree. */
    private static double leastReach(Scale scale) {
        return scale.turn() == 0 ? 10.0 * LengthUnit.MM.femtometres() : scale.turn() / 360.0;
    }

    private static double pitch(StageSpec stage) {
        return Math.max(0, stage.pitch());
    }

    /** The carriage's reference, its position on the unrolled axis. */
    public double carriage() {
        return bodies.get(bodies.size() - 1).reference();
    }

    /** The finest pitch above 0, or 0 if there is none. */
    public double finestPitch() {
        return stages.stream().mapToDouble(rows -> rows.base().pitch()).filter(p -> p > 0).min().orElse(0);
    }
}
