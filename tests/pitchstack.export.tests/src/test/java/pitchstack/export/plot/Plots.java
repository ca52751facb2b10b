// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AccuracyReader;
import pitchstack.analysis.accuracy.AxisBudget;
import pitchstack.analysis.accuracy.Si;
import pitchstack.analysis.accuracy.TravelPoint;
import pitchstack.core.accuracy.evaluation.Positioning;
import pitchstack.core.accuracy.evaluation.TargetVisits;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.teeth.Joint;
import pitchstack.core.accuracy.teeth.ToothForm;
import pitchstack.core.accuracy.teeth.ToothPair;
import pitchstack.core.accuracy.teeth.ToothVariant;
import pitchstack.core.stack.Setting;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** Draws the charts of the guide. It is no test of anything and is run by {@code releng/plots} alone. */
class Plots {
    private static final int WIDTH = 720;
    private static final int HEIGHT = 340;
    private static final int POINTS = 121;
    private static final double WITHIN_95 = 1.959964;

    private final Path folder = Path.of(System.getProperty("plots", "target/plots"));

    private void keep(String name, Plot plot) throws IOException {
        Files.createDirectories(folder);
        Files.write(folder.resolve(name + ".png"), plot.draw(PlotLook.page(WIDTH, HEIGHT)).png());
    }

    @Test
    void ofTheSlidePlate() throws IOException {
        Positioner plate = StackFile.load(Path.of("../../bundles/pitchstack.help/examples/slide-plate.pitchstack"))
                .positioner();
        AxisAnalysis analysis = AxisAnalysis.of(plate, plate.getAxes().get(0));
        AxisBudget budget = new AxisBudget(AccuracyReader.read(plate, analysis));
        Setting now = analysis.current();
        keep("accuracy-budget", new BudgetBars(budget.at(now).result()));
        List<TravelPlot.Point> points = budget.along(now, budget.longestStage(), POINTS).stream()
                .sorted(Comparator.comparingLong((TravelPoint p) -> p.figures().position()))
                .map(p -> new TravelPlot.Point(Si.of(p.figures().position(), analysis.spec().scale()), p.figures()
                .expandedM(),
                        p.figures().result().factor() * p.figures().result().varying())).toList();
        keep("accuracy-travel", new TravelPlot(points, Si.of(analysis.spec().position(now), analysis.spec().scale()),
                PlotUnit.MM, PlotUnit.UM));
    }

    /** Twenty PLA teeth at 5 mm, 10 mm wide, solid and slotted. */
    @Test
    void ofPreload() throws IOException {
        ToothForm form = ToothForm.basicRack(5e-3 / Math.PI, 10e-3);
        Joint solid = new Joint(ToothPair.alike(form, Material.PLA.elasticity(), true), ToothVariant.SOLID, 20, 20,
                42e-6, 0.6);
        double slotM = form.thicknessM(form.dedendumM()) / 4;
        keep("accuracy-preload-solid", bearing(solid));
        keep("accuracy-preload-slotted", bearing(solid.with(new ToothVariant(slotM, true, 0))));
    }

    private static BearingPlot bearing(Joint joint) {
        return new BearingPlot(DoubleStream.iterate(10, n -> n <= 1500, n -> n + 10).mapToObj(n -> {
            Joint.Held held = joint.at(n);
            return new BearingPlot.Point(n, held.bearingShare(), WITHIN_95 * held.spreadM());
        }).toList(), 200, PlotUnit.UM);
    }

    /** Invented visits of six targets, five times from each side. */
    @Test
    void ofARun() throws IOException {
        SplittableRandom chance = new SplittableRandom(3);
        List<TargetVisits> visits = IntStream.range(0, 6).mapToObj(i -> new TargetVisits(0.1 * i + 0.013 * (i % 2),
                visits(chance, 2e-6 * i), visits(chance, 2e-6 * i - 3e-6))).toList();
        keep("accuracy-run", new RunPlot(Positioning.of(visits), PlotUnit.MM, PlotUnit.UM));
    }

    private static List<Double> visits(SplittableRandom chance, double meanM) {
        return IntStream.range(0, 5).mapToObj(i -> meanM + 1.5e-6 * chance.nextGaussian()).toList();
    }
}
