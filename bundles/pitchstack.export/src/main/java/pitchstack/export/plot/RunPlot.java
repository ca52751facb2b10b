// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.Spread;
import pitchstack.core.accuracy.evaluation.TargetFigures;

/**
 * A run of measurements as ISO 230-2 evaluates it: the mean deviation at every target from each side, with bars of ±2s.
 *
 * @param run the evaluation
 * @param positionUnit of the targets
 * @param errorUnit of the deviations
 */
public record RunPlot(Positioning run, PlotUnit positionUnit, PlotUnit errorUnit) implements Plot {
    @Override
    public Picture draw(PlotLook look) {
        LineChart chart = new LineChart(look, "Target, " + positionUnit.symbol(), "Deviation, " + errorUnit.symbol());
        add(chart, "From below, mean ± 2s", TargetFigures::up, look.palette().first(), false,
                SeriesMarkers.TRIANGLE_UP);
        add(chart, "From above, mean ± 2s", TargetFigures::down, look.palette().second(), true,
                SeriesMarkers.TRIANGLE_DOWN);
        double[] x = run.targets().stream().mapToDouble(t -> positionUnit.of(t.targetM())).sorted().toArray();
        List<Spread> spreads = run.targets().stream().flatMap(t -> Stream.concat(t.up().stream(), t.down().stream()))
                .toList();
        chart.show(x[0], x[x.length - 1], errorUnit.of(spreads.stream().mapToDouble(Spread::lowM).min().orElseThrow()),
                errorUnit.of(spreads.stream().mapToDouble(Spread::highM).max().orElseThrow()));
        return chart.draw();
    }

    private void add(LineChart chart, String name, Function<TargetFigures, Optional<Spread>> side, int colour,
            boolean dashed, Marker marker) {
        List<TargetFigures> visited = run.targets().stream().filter(t -> side.apply(t).isPresent()).toList();
        if (visited.isEmpty()) {
            return;
        }
        double[] x = visited.stream().mapToDouble(t -> positionUnit.of(t.targetM())).toArray();
        double[] y = visited.stream().mapToDouble(t -> errorUnit.of(side.apply(t).orElseThrow().meanM())).toArray();
        double[] spread = visited.stream().mapToDouble(t -> errorUnit.of(2 * side.apply(t).orElseThrow().deviationM()))
                .toArray();
        chart.marked(name, x, y, spread, colour, dashed, marker);
    }

    @Override
    public String description() {
        StringBuilder said = new StringBuilder("Deviation at " + run.targets().size() + " targets.");
        for (TargetFigures target : run.targets()) {
            said.append(" At ").append(Figures.of(positionUnit.of(target.targetM()), 4)).append(' ')
                    .append(positionUnit.symbol()).append(':');
            target.up().ifPresent(s -> said.append(" from below ").append(said(s)));
            target.down().ifPresent(s -> said.append(" from above ").append(said(s)));
            said.append('.');
        }
        return said.toString();
    }

    private String said(Spread s) {
        return Figures.of(errorUnit.of(s.meanM()), 3) + " ± " + Figures.of(errorUnit.of(2 * s.deviationM()), 2) + " "
                + errorUnit.symbol();
    }
}
