// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Answer;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.edit.start.StackWish.Field;
import pitchstack.model.AxisKind;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;
import pitchstack.model.file.StackFile;

/** Stacks made from what is typed into the new-stack pages. */
final class StartingStackTest {
    private static final ShopDefaults SHOP = ShopDefaults.of(Locale.GERMANY);

    private static StackWish linear(DisplayUnit unit, String travel, String step, String rack) {
        return new StackWish(AxisKind.LINEAR, unit, travel, step, rack, "0.4");
    }

    private static StackWish rotary(String travel, String step, String ring) {
        return new StackWish(AxisKind.ROTARY, DisplayUnit.MM, travel, step, ring, "0.4");
    }

    private static StartingStack made(StackWish wish) {
        assertEquals(Map.of(), new WishReading(wish).complaints());
        return assertInstanceOf(StartingStack.Made.class,
                StartingStack.of(wish, StageCosts.USUAL, Progress.NONE)).stack();
    }

    private static List<String> pitches(StartingStack stack) {
        return stack.axis().getStages().stream().map(Stage::getPitch).toList();
    }

    /** The fence of the design: 1/4 in and 0.24 in give 0.010 in over 96 in. */
    @Test
    void makesTheFenceFromItsTravelStepAndRack() {
        StartingStack stack = made(linear(DisplayUnit.INCH, "96", "0.010", "1/4 in CP"));
        assertEquals(List.of("1/4 in CP", "0.24 in"), pitches(stack));
        assertEquals(List.of(StageSource.BOUGHT, StageSource.PRINTED),
                stack.axis().getStages().stream().map(Stage::getSource).toList());
        assertTrue(stack.proof().holds());
        assertEquals(254_000_000_000L, stack.proof().finest().spacing(), "0.010 in in femtometres");
        assertEquals("96 in", stack.axis().getHigh());
        assertEquals("0.005 in", stack.axis().getTolerance());
    }

    @ParameterizedTest
    @CsvSource({
        "MM, 600, 0.1, 5 mm", "MM, 600 mm, 0.01 mm, module 1", "MM, 300, 0.05, ''", "INCH, 24, 0.001, 24 DP",
        "INCH, 10, 0.004, 1/4 in CP", "MM, 200, 20 um, module 0.5", "MM, 100, 8, 5 mm", "MM, 2000, 0.02, 2.54 mm",
        "INCH, 37 5/8, 1/64, ''", "MM, 50, 10, ''", "MM, 100, 0.0005, 5 mm"})
    void reachesEveryPositionOfALine(DisplayUnit unit, String travel, String step, String rack) {
        StackWish wish = linear(unit, travel, step, rack);
        StartingStack stack = made(wish);
        WishReading reading = new WishReading(wish);
        assertTrue(stack.proof().holds(), wish.toString());
        assertTrue(stack.proof().finest().spacing() <= reading.step());
        assertTrue(stack.proof().coverage().travel() - 1 + reading.step() / 2 >= reading.travel(), "up to the end");
        assertTrue(stack.findings().stream().noneMatch(finding -> finding.severity() != Severity.NOTE),
                wish + ": " + stack.findings());
        reachesByPlanning(stack, reading.travel());
    }

    @ParameterizedTest
    @CsvSource({"360°, 0.1°, 360 per turn", "360°, 1', ''", "90°, 30 arcsec, 360 per turn", "360, 0.5, 120 per turn",
        "360°, 5°, ''", "45, 0.1, 200 per turn"})
    void reachesEveryAngle(String travel, String step, String ring) {
        StackWish wish = rotary(travel, step, ring);
        StartingStack stack = made(wish);
        assertTrue(stack.proof().holds(), wish + ": " + pitches(stack) + stack.proof());
        assertTrue(stack.findings().stream().noneMatch(finding -> finding.severity() == Severity.ERROR));
        AxisSpec spec = AxisAnalysis.of(stack.positioner(), stack.axis()).spec();
        reachesByPlanning(stack, spec.scale().parse(travel));
    }

    /** 1° less 0.9° is a tenth of a degree: 360 and 400 teeth. */
    @Test
    void findsTheSecondRingOfADividingTable() {
        assertEquals(List.of("360 per turn", "400 per turn"), pitches(made(rotary("360", "0.1", "360 per turn"))));
    }

    /** 121 teeth differ from 120 by 3° / 121 = 1.49', too much for 1'; sectors of 2°59' do not. */
    @Test
    void takesSectorsWhereNoWholeNumberOfTeethIsFineEnough() {
        StartingStack stack = made(rotary("360", "1'", "120 per turn"));
        assertEquals("2°59'00\"", stack.axis().getStages().get(stack.axis().getStages().size() - 1).getPitch());
    }

    /** The planner, which knows nothing of how the stack was found, sets a hundred places within half a step. */
    private static void reachesByPlanning(StartingStack stack, long travel) {
        AxisAnalysis analysis = AxisAnalysis.of(stack.positioner(), stack.axis());
        long tolerance = stack.proof().step() / 2 + 1;
        for (long part = 0; part <= 100; part++) {
            long target = travel / 100 * part + part * 7;
            Answer answer = analysis.planner().orElseThrow().plan(new PlanRequest(Math.min(travel, target), tolerance,
                    analysis.current(), analysis.last(), WornPolicy.NEVER, 0));
            assertInstanceOf(Answer.Reached.class, answer, stack.axis().getName() + " " + target);
        }
    }

    @Test
    void savesAndLoadsAsAnyOther(@TempDir Path folder) throws Exception {
        Positioner positioner = made(linear(DisplayUnit.MM, "600", "0.1", "5 mm")).positioner();
        StackFile.save(positioner, folder.resolve("new.pitchstack"));
        assertTrue(EcoreUtil.equals(positioner, StackFile.load(folder.resolve("new.pitchstack")).positioner()));
    }

    @Test
    void givesStagesTheCostsOfTheShop() {
        StartingStack stack = ((StartingStack.Made) StartingStack.of(linear(DisplayUnit.MM, "600", "0.1", "5 mm"),
                new StageCosts(7, 0.5, 2), Progress.NONE)).stack();
        for (Stage stage : stack.axis().getStages()) {
            assertEquals(List.of(7.0, 0.5, 2.0),
                    List.of(stage.getReleaseSeconds(), stage.getPerToothSeconds(), stage.getReversalSeconds()));
        }
    }

    @Test
    void saysWhichStepIsTheFinestWhereTheWishIsTooFine() {
        StartingStack.Result result = StartingStack.of(linear(DisplayUnit.MM, "600", "0.0001", "5 mm"), StageCosts.USUAL,
                Progress.NONE);
        String sentence = assertInstanceOf(StartingStack.NotMade.class, result).sentence();
        assertTrue(sentence.contains("ask for 0.0002 mm or more"), sentence);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "TRAVEL | '' | 0.1 | 5 mm | 0.4 | travel is missing",
        "TRAVEL | -3 | 0.1 | 5 mm | 0.4 | leads nowhere",
        "TRAVEL | 60 km | 0.1 | 5 mm | 0.4 | not a unit of length",
        "TRAVEL | 60000 | 0.1 | 5 mm | 0.4 | 50 m",
        "STEP | 600 | '' | 5 mm | 0.4 | step is missing",
        "STEP | 600 | 0 | 5 mm | 0.4 | must be above 0",
        "STEP | 600 | 700 | 5 mm | 0.4 | shorter",
        "STEP | 600 | 0,1 | 5 mm | 0.4 | not a comma",
        "RACK | 600 | 0.1 | 0 mm | 0.4 | must be above 0",
        "RACK | 600 | 0.1 | 700 mm | 0.4 | as long as the whole travel",
        "RACK | 600 | 0.1 | 12 per turn | 0.4 | rotary axis",
        "LINE_WIDTH | 600 | 0.1 | 5 mm | '' | missing",
        "LINE_WIDTH | 600 | 0.1 | 5 mm | 12 | at most 5 mm"})
    void saysInOneSentenceWhatIsWrongWithAField(Field field, String travel, String step, String rack, String line,
            String part) {
        Map<Field, String> complaints = new WishReading(new StackWish(AxisKind.LINEAR, DisplayUnit.MM, travel, step, rack,
                line)).complaints();
        assertEquals(List.of(field), List.copyOf(complaints.keySet()));
        assertTrue(complaints.get(field).contains(part), complaints.toString());
    }

    @Test
    void summaryNamesWhatIsReachedAndTheLengthOfEveryRow() {
        List<String> said = new StackSummary(made(linear(DisplayUnit.INCH, "96", "0.010", "1/4 in CP")), SHOP).sentences();
        assertTrue(said.get(0).contains("96.000 in lies within 0.005 in"), said.toString());
        assertTrue(said.get(1).contains("finest step everywhere is 0.010 in"), said.toString());
        assertTrue(said.get(2).startsWith("Rack, bought, 1/4 in circular pitch: base row of "), said.toString());
        // Two rows of 24 teeth of 0.24 in.
        assertTrue(said.get(3).contains("base row of 24 teeth, 5.760 in, rider row of 24 teeth, 5.760 in"), said.toString());
        assertTrue(said.stream().noneMatch(sentence -> sentence.contains("pieces")), "146.3 mm, and a rack that is bought");
    }

    /** A bed of 220 mm takes 73 whole teeth of 3 mm; three pieces hold 219 of the 252. */
    @Test
    void summarySaysIntoHowManyPiecesALongPrintedRowFalls() {
        StartingStack stack = made(linear(DisplayUnit.MM, "600", "0.01", ""));
        assertEquals(252, stack.axis().getStages().get(0).getBaseRow().getTeeth());
        assertEquals("3 mm", stack.axis().getStages().get(0).getPitch());
        List<String> pieces = new StackSummary(stack, SHOP).sentences().stream()
                .filter(sentence -> sentence.contains("pieces")).toList();
        assertEquals(List.of("Rack is too long for a printer's bed of 220 mm: it is printed in pieces, the base row of 4, "
                + "each a whole number of teeth, whose joints must keep the pitch. A bought rack spares you that; go "
                + "back and give its pitch."), pieces);
        ShopDefaults large = new ShopDefaults(DisplayUnit.MM, false, StageCosts.USUAL, Theme.SYSTEM, "0.4 mm", "756 mm");
        assertTrue(new StackSummary(stack, large).sentences().stream().noneMatch(sentence -> sentence.contains("pieces")));
    }

    /** Teeth of π mm leave a travel that is no whole number of micrometres. */
    @Test
    void summaryLeavesTheTailOfALongWayOut() {
        List<String> said = new StackSummary(made(linear(DisplayUnit.MM, "600", "0.05", "module 1")), SHOP).sentences();
        assertTrue(said.get(0).matches("Every position of the travel of \\d+\\.\\d{3} mm lies.*"), said.get(0));
        // 220 π = 691.15038
        assertTrue(said.get(2).contains("220 teeth, 691.150 mm"), said.get(2));
    }
}
