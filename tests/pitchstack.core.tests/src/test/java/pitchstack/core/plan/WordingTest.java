// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import pitchstack.core.plan.Answer.Nearest;
import pitchstack.core.plan.Step.Kind;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;

/** Every sentence here was written by hand; every length in it is the number given, in other units. */
class WordingTest {
    private static final long MM = 1_000_000_000_000L;
    private static final long UM = 1_000_000_000L;
    private static final Scale METRIC = new LinearScale(LengthUnit.MM);
    private static final Setting ZERO = Setting.zero(2);

    private final Wording wording = new Wording(axis(METRIC, "Rack", "Adapter"));

    @Test
    void saysWhichStageMovesHowFarAndWhichWayLowestStageFirst() {
        assertEquals(List.of("Rack: 3 teeth forward, from 12 to 15.", "Adapter: 1 tooth back, from 0 to −1."),
                wording.steps(moved(new Step(0, 12, 15), new Step(1, 0, -1))));
    }

    @Test
    void keepsTheOrderOfTheStepsAndSaysNothingWhereThereIsNone() {
        assertEquals(List.of("Adapter: 1 tooth forward, from −1 to 0.", "Rack: 1 tooth back, from 2 to 1."),
                wording.steps(moved(new Step(1, -1, 0), new Step(0, 2, 1))));
        assertEquals(List.of(), wording.steps(moved()));
    }

    @Test
    void saysThatAStageGoesOneToothFurtherAndComesBack() {
        assertEquals(List.of("Rack: 4 teeth back, from 15 to 11, one tooth further than its place.",
                "Rack: 1 tooth forward, from 11 to 12, so that it ends moving forward."),
                wording.steps(moved(new Step(0, 15, 11, Kind.FURTHER), new Step(0, 11, 12, Kind.RETURN))));
        assertEquals("Adapter: 1 tooth back, from 1 to 0, so that it ends moving back.",
                wording.step(new Step(1, 1, 0, Kind.RETURN)));
    }

    @Test
    void saysThatAStageStopsPartwayForTheLimits() {
        assertEquals("Rack: 3 teeth back, from 0 to −3, as far as the limits allow for now.",
                wording.step(new Step(0, 0, -3, Kind.PARTWAY)));
    }

    @Test
    void saysWhyASettingCannotBeMovedTo() {
        Nearest nearest = nearest(Reason.NO_MOVE, at(95 * MM, -5 * MM), Optional.empty());
        String start = "100.000 mm could be set, but not from where the stages stand: ";
        String tooth = "a stage must come back by one tooth at the end, and the tooth further may not be used";
        String order = "every order of steps breaks a shift limit on the way";
        String end = "; the nearest position that can be set is 95.000 mm.";
        assertEquals(start + order + end, wording.reason(100 * MM, 0, nearest));
        assertEquals(start + tooth + end, limited(List.of()).reason(100 * MM, 0, nearest));
        assertEquals(start + tooth + ", or " + order + end, limited(List.of(new ShiftLimit(0, 1, MM))).reason(100 * MM, 0, nearest));
        assertEquals(start + tooth + "; nothing at all can be set from there.", limited(List.of())
                .reason(100 * MM, 0, nearest(Reason.NO_MOVE, Optional.empty(), Optional.empty())));
    }

    private static Wording limited(List<ShiftLimit> limits) {
        AxisSpec axis = axis(METRIC, "Rack", "Adapter");
        return new Wording(new AxisSpec("Axis", METRIC, axis.stages(), 0, OptionalLong.empty(), OptionalLong.empty(),
                limits, Approach.FORWARD, 0, OptionalLong.empty()));
    }

    private static PlannedSetting moved(Step... steps) {
        return new PlannedSetting(ZERO, 0, 0, 0, List.of(), List.of(steps));
    }

    @Test
    void countsTeethBeyondTheRangeOfAnInt() {
        assertEquals("Rack: 4294967295 teeth forward, from −2147483648 to 2147483647.",
                wording.step(new Step(0, Integer.MIN_VALUE, Integer.MAX_VALUE)));
    }

    @Test
    void callsANamelessStageByItsNumberFromTheBottom() {
        Wording nameless = new Wording(axis(METRIC, "Rack", " "));
        assertEquals("Stage 2: 1 tooth forward, from 0 to 1.", nameless.step(new Step(1, 0, 1)));
        assertEquals("Rack 12; Stage 2 −3", nameless.setting(Setting.of(12, -3)));
    }

    @Test
    void saysHowFarAPositionIsFromTheTargetAndOnWhichSide() {
        assertEquals("100.000 mm, exactly on the target", wording.position(planned(100 * MM, 0)));
        assertEquals("100.010 mm, 0.010 mm above the target", wording.position(planned(100 * MM + 10 * UM, 10 * UM)));
        assertEquals("99.990 mm, 0.010 mm below the target", wording.position(planned(100 * MM - 10 * UM, -10 * UM)));
    }

    @Test
    void callsAnErrorTooSmallToShowNeitherNothingNorZero() {
        assertEquals("100.000 mm, less than 0.0001 mm above the target", wording.position(planned(100 * MM + 1, 1)));
        Wording inches = new Wording(axis(new LinearScale(LengthUnit.INCH), "Rack", "Adapter"));
        assertEquals("1.000 in, less than 0.00001 in below the target", inches.position(planned(25_400_000_000_000L, -1)));
        Scale degrees = new RotaryScale(RotaryScale.ARC_SECONDS * 1_000_000);
        Wording rotary = new Wording(axis(degrees, "Ring", "Plate"));
        assertEquals("0°00'00\", less than 0.001\" above the target", rotary.position(planned(0, 1)));
    }

    @ParameterizedTest
    @CsvSource({"0, 0 s", "500, 0.5 s", "14000, 14 s", "59999, 59.999 s", "60000, 1 min", "160000, 2 min 40 s",
        "60500, 1 min 0.5 s", "2268000, 37 min 48 s", "3600000, 1 h", "3605000, 1 h 5 s", "7384500, 2 h 3 min 4.5 s"})
    void givesTheEffortInHoursMinutesAndSeconds(long milliseconds, String words) {
        assertEquals(words, wording.effort(new PlannedSetting(ZERO, 0, 0, milliseconds, List.of(), List.of())));
    }

    @Test
    void namesEveryWornStage() {
        Wording three = new Wording(axis(METRIC, "Rack", "Adapter", "Fence"));
        assertEquals(Optional.empty(), three.worn(worn()));
        assertEquals(Optional.of("This stands on worn teeth of “Adapter”; check the position before you rely on it."),
                three.worn(worn(1)));
        assertEquals(Optional.of("This stands on worn teeth of “Rack”, “Adapter” and “Fence”; "
                + "check the position before you rely on it."), three.worn(worn(0, 1, 2)));
    }

    @Test
    void namesTheHighestPositionForATargetAboveTheTravel() {
        assertEquals("600.000 mm is beyond the travel; the highest position that can be set is 550.000 mm.",
                wording.reason(600 * MM, 0, nearest(Reason.BEYOND_TRAVEL, at(550 * MM, -50 * MM), Optional.empty())));
    }

    @Test
    void namesTheLowestPositionForATargetBelowTheTravel() {
        assertEquals("−1.000 mm is beyond the travel; the lowest position that can be set is 0.000 mm.",
                wording.reason(-MM, 0, nearest(Reason.BEYOND_TRAVEL, Optional.empty(), at(0, MM))));
    }

    @Test
    void namesBothEndsOfTheTravelWhereATurnHasTwo() {
        Scale degrees = new RotaryScale(RotaryScale.ARC_SECONDS);
        Wording rotary = new Wording(axis(degrees, "Ring", "Plate"));
        assertEquals("180°00'00\" is outside the travel; the nearest positions that can be set are "
                + "90°00'00\" and 270°00'00\".", rotary.reason(180 * 3600, 0, nearest(Reason.BEYOND_TRAVEL,
                        at(90 * 3600, -90 * 3600), at(270 * 3600, 90 * 3600))));
    }

    @Test
    void saysSoWhereNothingCanBeSet() {
        assertEquals("1.000 mm is outside the travel; nothing at all can be set, since every setting stands over teeth "
                + "that may not be used.",
                wording.reason(MM, 0, nearest(Reason.BEYOND_TRAVEL, Optional.empty(), Optional.empty())));
    }

    @Test
    void givesTheDistanceAndTheToleranceForATargetBetweenSteps() {
        assertEquals("412.780 mm lies between 412.750 mm and 412.850 mm; the nearer is 0.030 mm away, "
                + "and the tolerance is 0.010 mm.", wording.reason(412_780 * UM, 10 * UM, between(412_780, 412_750, 412_850)));
        assertEquals("412.800 mm lies between 412.750 mm and 412.850 mm; both are 0.050 mm away, "
                + "and no error is allowed.", wording.reason(412_800 * UM, 0, between(412_800, 412_750, 412_850)));
    }

    @Test
    void callsNeitherNeighbourTheNearerWhereTheDifferenceIsTooSmallToRead() {
        assertEquals("412.800 mm lies between 412.750 mm and 412.850 mm; both are 0.050 mm away, "
                + "and no error is allowed.", wording.reason(412_800 * UM, 0, nearest(Reason.BETWEEN_STEPS,
                        at(412_750 * UM + 1, -50 * UM + 1), at(412_850 * UM, 50 * UM))));
    }

    @Test
    void saysThatADistanceIsJustOverTheToleranceWhereRoundingHidesIt() {
        assertEquals("412.780 mm lies between 412.750 mm and 412.850 mm; the nearer is 0.030 mm away, "
                + "just over the tolerance.", wording.reason(412_780 * UM, 30 * UM - 1, between(412_780, 412_750, 412_850)));
    }

    @Test
    void namesTheOneUsableNeighbourWhereTheOtherSideHasNone() {
        assertEquals("412.780 mm lies between two steps; the nearest position that can be set is 412.850 mm.",
                wording.reason(412_780 * UM, 0, nearest(Reason.BETWEEN_STEPS, Optional.empty(),
                        at(412_850 * UM, 70 * UM))));
    }

    @Test
    void saysThatOnlyUnusableTeethWouldReachTheTarget() {
        assertEquals("100.000 mm could be set only over teeth that may not be used; the nearest positions that can be set "
                + "are 99.900 mm and 100.200 mm.", wording.reason(100 * MM, 0, nearest(Reason.UNUSABLE_TEETH,
                        at(99_900 * UM, -100 * UM), at(100_200 * UM, 200 * UM))));
    }

    private static Nearest between(long targetUm, long belowUm, long aboveUm) {
        return nearest(Reason.BETWEEN_STEPS, at(belowUm * UM, (belowUm - targetUm) * UM),
                at(aboveUm * UM, (aboveUm - targetUm) * UM));
    }

    private static Nearest nearest(Reason reason, Optional<PlannedSetting> below, Optional<PlannedSetting> above) {
        return new Nearest(below, above, reason);
    }

    private static Optional<PlannedSetting> at(long position, long error) {
        return Optional.of(planned(position, error));
    }

    private static PlannedSetting planned(long position, long error) {
        return new PlannedSetting(ZERO, position, error, 0, List.of(), List.of());
    }

    private static PlannedSetting worn(Integer... stages) {
        return new PlannedSetting(ZERO, 0, 0, 0, List.of(stages), List.of());
    }

    private static AxisSpec axis(Scale scale, String... stageNames) {
        RowSpec row = new RowSpec(10, List.of());
        List<StageSpec> stages = List.of(stageNames).stream().map(name -> new StageSpec(name, Source.BOUGHT, 5 * MM, 5 * MM,
                new RowPair(row, row, 0, 1), new EffortCost(4000, 1000))).toList();
        return new AxisSpec("Axis", scale, stages, 0, OptionalLong.empty(), OptionalLong.empty(), List.of(), 0,
                OptionalLong.empty());
    }
}
