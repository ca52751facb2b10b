// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.total.RowLength;
import pitchstack.core.accuracy.total.StageAccuracy;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.BedDirection;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Span;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.model.file.StackFile;

class AccuracyReaderTest {
    private static final double UM = 1e-6;

    private static void assertSays(AccuracyReading reading, String... words) {
        for (String some : words) {
            assertTrue(reading.assumptions().stream().anyMatch(sentence -> sentence.contains(some)), some + " is not in "
                    + reading.assumptions());
        }
    }

    /**
     * 742.3 mm = 122·5 + 27·4.9: rack 10 ppm of 610 mm, print 200 ppm of 132.3 mm, two seats of 5 µm; ±2 K alike of steel and PLA
     * as one temperature; and, of second order, coefficients known to 10 and 30 %.
     */
    @Test
    void addsUpTheMachineByHand() {
        Stage rack = Devices.rack();
        rack.setMaterial("steel");
        rack.getBaseRow().setScaleUncertaintyPpm(10);
        Stage fine = Devices.stage("Fine", "4.9 mm", StageSource.PRINTED, 60, 10);
        fine.setMaterial("PLA");
        fine.getBaseRow().setScaleUncertaintyPpm(200);
        for (Stage stage : List.of(rack, fine)) {
            stage.setScatter("0 mm");
            stage.setSeatScatter("0.0316227766 mm");
        }
        Positioner positioner = Devices.of(rack, fine);
        double kelvin = 2 / Math.sqrt(3);
        double warmth = (610e3 * 11.5e-6 + 132.3e3 * 68e-6) * kelvin;
        double second = Math.hypot(610e3 * 1.15e-6, 132.3e3 * 20.4e-6) * kelvin;
        double expected = Math.sqrt(6.10 * 6.10 + 26.46 * 26.46 + 25 + 25 + warmth * warmth + second * second);
        SettingFigures figures = new AxisBudget(Devices.read(positioner)).at(Setting.of(122, 27));
        assertEquals(expected, figures.combinedM() / UM, 0.001);
        assertEquals(1.959964 * expected, figures.expandedM() / UM, 0.002);
        assertEquals(Math.hypot(6.10, 26.46), figures.result().repeating() / UM, 0.001);
        assertEquals(1, figures.lines().stream().mapToDouble(BudgetLine::share).sum(), 1e-12);
        assertEquals("Base row of “Fine”", figures.lines().get(0).name());
        assertEquals("200.0 ppm × 132.300 mm", figures.lines().get(0).comesIn(false));
    }

    @Test
    void saysWhatItTookWhereTheFileIsSilent() {
        AccuracyReading silent = Devices.read(Devices.of(Devices.rack(), Devices.printed()));
        assertSays(silent, "“Rack”, base row: no material is given; it counts as steel.",
                "“Rack”, base row: no grade is given; it counts as cut, ISO 1328-1:2013 class 10",
                "“Fine”, base row: no material is given; it counts as PLA.",
                "“Fine”, base row: nothing says how well its length is known; 0.10 % (1 σ) is taken",
                "“Fine”: nothing says how a flank seats", "no preload is given", "it counts as exact",
                "± 2.0 K alike", "Usual numbers of PLA, not measured: it grows by 68.0 ± 20.4 ppm/K", "No material of the work");
        assertEquals(List.of(), silent.unreadable());
    }

    @Test
    void takesNothingForGrantedThatTheFileSays() {
        Stage fine = Devices.printed();
        fine.setMaterial("PETG");
        fine.setScatter("0.02 mm");
        fine.setSeatScatter("0.004 mm");
        fine.setPreloadN(200);
        fine.setFriction(0.5);
        fine.getBaseRow().setFaceWidth("10 mm");
        fine.getRiderRow().setFaceWidth("12 mm");
        fine.getBaseRow().setScaleUncertaintyPpm(150);
        fine.getRiderRow().setScaleUncertaintyPpm(150);
        AccuracyReading reading = Devices.read(Devices.of(fine));
        StageAccuracy stage = reading.accuracy().stages().get(0);
        assertEquals(20 * UM, stage.base().scatterM(), 1e-15);
        assertEquals(4 * UM, stage.seatM(), 1e-15);
        assertEquals(Material.PETG.expansion(), stage.rider().expansion());
        assertEquals(200, stage.hold().orElseThrow().preloadN());
        assertEquals(0.5, stage.hold().orElseThrow().friction());
        assertEquals(new RowLength.Scaled(150e-6, ""), stage.base().length());
        assertTrue(reading.assumptions().stream().noneMatch(sentence -> sentence.contains("is taken, common practice")
                || sentence.contains("material is given") && sentence.startsWith("“Fine”")), reading.assumptions().toString());
    }

    /**
     * Type A of ISO 53 at its pitch line: 0.712333 by bending, 2.033920 by shear and 3.59901 by its ground over E·b, across; two
     * teeth alike, along the normal.
     */
    @Test
    void findsTheStiffnessOfTheToothDrawn() {
        Stage fine = Devices.printed();
        fine.setMaterial("PLA");
        fine.setPreloadN(100);
        fine.getBaseRow().setFaceWidth("10 mm");
        fine.getRiderRow().setFaceWidth("10 mm");
        double along = 3e9 * 0.010 / (0.712333 + 2.033920 + 3.59901) / 2 / Math.pow(Math.cos(Math.toRadians(20)), 2);
        assertEquals(along, Devices.read(Devices.of(fine)).accuracy().stages().get(0).hold().orElseThrow().stiffnessNPerM(),
                1e-5 * along);
    }

    @Test
    void aGradeSaysLengthAndScatterOfARack() {
        Stage rack = Devices.rack();
        rack.setPitch("module 1");
        rack.getBaseRow().setTeeth(318);
        rack.getBaseRow().setGrade("ISO 1328-1:2013 class 8");
        // 318 teeth of module 1 are the circumference of d = 318 mm: the table of 318.31 mm gives 16 and 65 µm at module 2; here
        // f = (0.318 + 0.4 + 5)·2^1.5 = 16.17 and F = (0.636 + 0.55·√318 + 0.7 + 12)·2^1.5 = 65.46, rounded 16 and 65.
        StageAccuracy stage = Devices.read(Devices.of(rack)).accuracy().stages().get(0);
        RowLength.Graded graded = assertInstanceOf(RowLength.Graded.class, stage.base().length());
        assertEquals(16 * UM, graded.tolerance().pitchM(), 1e-12);
        assertEquals(65 * UM, graded.tolerance().totalM(), 1e-12);
        assertEquals(16 * UM / Math.sqrt(6), stage.base().scatterM(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"class eight", "ISO 1328-1:2020 class 8", "DIN 8", "8"})
    void refusesAGradeThatIsNone(String grade) {
        Stage rack = Devices.rack();
        rack.getBaseRow().setGrade(grade);
        assertEquals(List.of("“Rack”, base row: “" + grade + "” is not a grade; write it like “ISO 1328-1:2013 class 8” or"
                + " “ISO 1328-1:1995 grade 8”."), Devices.read(Devices.of(rack)).unreadable());
    }

    @ParameterizedTest
    @CsvSource({"PLA,PLA", "pla,PLA", "Aluminum,aluminium", "PA12,nylon", "POM,acetal", "cast iron,grey cast iron"})
    void knowsMaterialsByTheirUsualNames(String typed, String name) {
        assertEquals(name, Materials.named(typed).orElseThrow().name());
    }

    @Test
    void refusesNumbersThatAreNone() {
        Stage fine = Devices.printed();
        fine.setScatter("much");
        fine.setPreloadN(-3);
        fine.setSeatScatter("-1 mm");
        Positioner positioner = Devices.of(fine);
        positioner.setSharedScale(1.5);
        positioner.setTemperatureHalfWidthK(Double.NaN);
        List<String> sentences = Devices.read(positioner).unreadable();
        assertEquals(6, sentences.size(), sentences.toString());
        assertTrue(sentences.contains("“Fine”: the preload is -3.0; it must be a number of at least 0."), sentences.toString());
        assertTrue(sentences.contains("“Fine”: the scatter of its seat is -1 mm; it must not be below 0."), sentences.toString());
    }

    @Test
    void warnsOfEveryEntryThatCannotBeRead() {
        Stage rack = Devices.rack();
        Stage fine = Devices.printed();
        Positioner positioner = Devices.of(rack, fine);
        assertEquals(List.of(), unreadable(positioner));
        fine.setSeatScatter("-1 mm");
        rack.getBaseRow().setGrade("DIN 8");
        positioner.setSharedScale(1.5);
        assertEquals(List.of(Place.AXIS, Place.stage(0), Place.stage(1)), unreadable(positioner).stream().map(Finding::place)
                .toList());
        assertEquals(Devices.read(positioner).unreadable().stream().sorted().toList(),
                unreadable(positioner).stream().map(Finding::sentence).sorted().toList());
        fine.setSeatScatter("1 um");
        rack.getBaseRow().setGrade("ISO 1328-1:2013 class 8");
        positioner.setSharedScale(1);
        assertEquals(List.of(), unreadable(positioner));
    }

    private static List<Finding> unreadable(Positioner positioner) {
        AxisAnalysis plain = AxisAnalysis.of(positioner, Devices.axis(positioner));
        List<Finding> findings = AccuracyFindings.with(positioner, plain).findings();
        return findings.subList(plain.findings().size(), findings.size());
    }

    /** 155 mm measured 155.031 ± 0.0155 mm: 200 ± 100 ppm, within its 95 % of none. */
    @Test
    void spansSayHowWellAPrintIsKnown() {
        Positioner positioner = Devices.of(Devices.printed());
        Devices.axis(positioner).getStages().get(0).getBaseRow().setPrintSetup("bed");
        span(positioner, "0.0155 mm", "155 mm", "155.0155 mm");
        RowLength.Scaled known = assertInstanceOf(RowLength.Scaled.class,
                Devices.read(positioner).accuracy().stages().get(0).base().length());
        assertEquals(100e-6, known.uncertainty(), 1e-12);
        assertEquals("bed", known.setUp());
    }

    /** 155.155 mm are 1000 ± 100 ppm too long, and no pitch is corrected: half widths of 1000 ppm, alike, beside the 100. */
    @Test
    void aPrintThatCameOutWrongCountsUntilItIsCorrected() {
        Positioner positioner = Devices.of(Devices.printed());
        Stage stage = Devices.axis(positioner).getStages().get(0);
        stage.getBaseRow().setPrintSetup("bed");
        span(positioner, "0.0155 mm", "155 mm", "155.155 mm");
        RowLength.Scaled wrong = (RowLength.Scaled) Devices.read(positioner).accuracy().stages().get(0).base().length();
        assertEquals(Math.hypot(100e-6, 1000e-6 / Math.sqrt(3)), wrong.uncertainty(), 1e-12);
        assertSays(Devices.read(positioner), "its spans came out +1000 ppm off");
        stage.setCorrectionPpm(1000);
        RowLength.Scaled corrected = (RowLength.Scaled) Devices.read(positioner).accuracy().stages().get(0).base().length();
        assertEquals(100e-6, corrected.uncertainty(), 1e-12);
    }

    private static void span(Positioner positioner, String uncertainty, String drawn, String measured) {
        PrintSetup setup = PitchstackFactory.eINSTANCE.createPrintSetup();
        setup.setName("bed");
        setup.setUncertainty(uncertainty);
        Span span = PitchstackFactory.eINSTANCE.createSpan();
        span.setDirection(BedDirection.X);
        span.setDrawn(drawn);
        span.setMeasured(measured);
        setup.getSpans().add(span);
        positioner.getPrintSetups().add(setup);
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void readsEveryEntryOfTheExamples(String name) throws Exception {
        Path file = Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("../..")
                .normalize().resolve("bundles/pitchstack.help/examples").resolve(name + "." + StackFile.EXTENSION);
        Positioner positioner = StackFile.load(file).positioner();
        for (Axis axis : positioner.getAxes()) {
            AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
            AccuracyReading reading = AccuracyReader.read(positioner, analysis);
            assertEquals(List.of(), reading.unreadable());
            SettingFigures figures = new AxisBudget(reading).at(analysis.current());
            assertTrue(figures.combinedM() > 0 && Double.isFinite(figures.expandedM()));
            assertTrue(figures.lines().stream().allMatch(line -> line.cause().isPresent()), figures.lines().toString());
        }
    }
}
