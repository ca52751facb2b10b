// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static pitchstack.core.Stacks.MM;
import static pitchstack.core.Stacks.UM;
import static pitchstack.core.Stacks.mark;
import static pitchstack.core.Stacks.row;
import static pitchstack.core.Stacks.with;
import static pitchstack.core.Stacks.withDatum;
import static pitchstack.core.Stacks.withLimits;
import static pitchstack.core.Stacks.withPitch;
import static pitchstack.core.Stacks.withStage;
import static pitchstack.core.Stacks.withSteps;
import static pitchstack.core.Stacks.withStops;

import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import pitchstack.core.Stacks;
import pitchstack.core.plan.Soundness;
import pitchstack.core.geometry.BasicRack;
import pitchstack.core.geometry.ToothForm;
import pitchstack.core.plan.Stop;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.IndexErrors;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.ShiftLimit;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.stack.Wear;
import pitchstack.core.units.RotaryScale;

/** Each check on a stack that it must find fault with, and on the same stack mended. */
final class ChecksTest {
    /** A usual line. */
    private static final double LINE_M = 0.4e-3;
    private static final EffortCost COST = new EffortCost(4000, 1000);
    private static final StageSpec RACK = new StageSpec("rack", Source.BOUGHT, 5 * MM, 5 * MM,
            new RowPair(row(200), row(20), 0, 12), COST);
    private static final StageSpec FINE = new StageSpec("fine", Source.PRINTED, 49 * MM / 10, 49 * MM / 10,
            new RowPair(row(60), row(30), 15, 12), COST);
    /** Indices −8…188 of 5 mm and −33…33 of 4.9 mm: 67 fine settings; positions −201.7…1101.7 mm. */
    private static final AxisSpec GOOD = withSteps(Stacks.axis(RACK, FINE), 10 * UM, MM / 10);

    @Test
    void findsNothingInAGoodStack() {
        assertEquals(List.of(), Checks.run(subject(GOOD)));
    }

    @Test
    void findsAnAxisWithoutStages() {
        AxisSpec empty = Stacks.axis();
        assertFinds(new NoStage(), subject(empty), "no-stage", Severity.ERROR, Place.AXIS);
        assertFindsNothing(new NoStage(), subject(GOOD));
    }

    @Test
    void findsAPitchOfZeroAndBelow() {
        for (long pitch : new long[] {0, -MM, Long.MIN_VALUE}) {
            AxisSpec bad = withStage(GOOD, 1, withPitch(FINE, pitch));
            assertFinds(new PitchNotPositive(), subject(bad), "pitch-not-positive", Severity.ERROR, Place.stage(1));
        }
        assertFindsNothing(new PitchNotPositive(), subject(withStage(GOOD, 1, withPitch(FINE, 1))));
    }

    @Test
    void findsARowWithoutTeeth() {
        AxisSpec bad = withStage(GOOD, 0, with(RACK, new RowPair(row(200), row(0), 0, 12)));
        assertFinds(new RowWithoutTeeth(), subject(bad), "row-without-teeth", Severity.ERROR,
                Place.row(0, Place.Part.RIDER_ROW));
        AxisSpec both = withStage(GOOD, 1, with(FINE, new RowPair(row(-3), row(0), 0, 12)));
        assertEquals(List.of(Place.row(1, Place.Part.BASE_ROW), Place.row(1, Place.Part.RIDER_ROW)),
                new RowWithoutTeeth().apply(subject(both)).stream().map(Finding::place).toList());
        assertFindsNothing(new RowWithoutTeeth(),
                subject(withStage(GOOD, 0, with(RACK, new RowPair(row(200), row(1), 0, 1)))));
    }

    @Test
    void findsANegativeCost() {
        for (EffortCost cost : List.of(new EffortCost(-1, 0), new EffortCost(0, -1), new EffortCost(0, 0, -1))) {
            assertFinds(new CostNegative(), subject(withStage(GOOD, 1, with(FINE, cost))), "cost-negative",
                    Severity.ERROR, Place.stage(1));
        }
        assertFindsNothing(new CostNegative(), subject(withStage(GOOD, 1, with(FINE, new EffortCost(0, 0)))));
    }

    @Test
    void findsAMinimumOfEngagedTeethBelowOne() {
        AxisSpec bad = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, 0)));
        assertFinds(new MinimumEngagedBelowOne(), subject(bad), "minimum-engaged-below-one", Severity.WARNING,
                Place.stage(1));
        AxisSpec mended = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, 1)));
        assertFindsNothing(new MinimumEngagedBelowOne(), subject(mended));
    }

    @Test
    void findsRowsThatNeverMeetWithEnoughTeeth() {
        AxisSpec bad = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, 31)));
        assertFinds(new RowsNeverMeet(), subject(bad), "rows-never-meet", Severity.ERROR, Place.stage(1));
        AxisSpec mended = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, 30)));
        assertFindsNothing(new RowsNeverMeet(), subject(mended));
    }

    @Test
    void findsTooFewEngagedTeethToAverage() {
        AxisSpec bad = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, 3)));
        Finding found = assertFinds(new FewEngaged(), subject(bad), "few-engaged", Severity.WARNING, Place.stage(1));
        // 1/√3 = 0.577…
        assertTrue(found.sentence().contains("58 %"), found.sentence());
        AxisSpec mended = withStage(GOOD, 1, with(FINE, new RowPair(row(60), row(30), 15, FewEngaged.FEWEST)));
        assertFindsNothing(new FewEngaged(), subject(mended));
    }

    @Test
    void findsMarksOutsideTheirRow() {
        RowSpec past = row(60, mark(3, 5, Wear.WORN), mark(58, 60, Wear.BARRED));
        assertFinds(new WornOutsideRow(), subject(withStage(GOOD, 1, with(FINE, new RowPair(past, row(30), 15, 12)))),
                "worn-outside-row", Severity.WARNING, Place.worn(1, Place.Part.BASE_ROW, 1));
        RowSpec before = row(30, mark(-1, 2, Wear.WORN));
        assertFinds(new WornOutsideRow(),
                subject(withStage(GOOD, 1, with(FINE, new RowPair(row(60), before, 15, 12)))), "worn-outside-row",
                Severity.WARNING, Place.worn(1, Place.Part.RIDER_ROW, 0));
        RowSpec inside = row(60, mark(3, 5, Wear.WORN), mark(58, 59, Wear.BARRED));
        assertFindsNothing(new WornOutsideRow(),
                subject(withStage(GOOD, 1, with(FINE, new RowPair(inside, row(30), 15, 12)))));
    }

    @Test
    void findsMarksOverTheSameTeeth() {
        RowSpec twice = row(60, mark(20, 22, Wear.WORN), mark(3, 9, Wear.WORN), mark(9, 12, Wear.BARRED));
        Finding found = assertFinds(new MarksOverlap(),
                subject(withStage(GOOD, 1, with(FINE, new RowPair(twice, row(30), 15, 12)))), "marks-overlap",
                Severity.NOTE, Place.worn(1, Place.Part.BASE_ROW, 2));
        assertEquals("teeth 9 to 9", found.value());
        // The one inside the long one is found although another lies between their starts.
        RowSpec inside = row(60, mark(3, 20, Wear.WORN), mark(4, 5, Wear.BARRED), mark(10, 12, Wear.BARRED));
        assertEquals(List.of(Place.worn(1, Place.Part.RIDER_ROW, 1), Place.worn(1, Place.Part.RIDER_ROW, 2)),
                new MarksOverlap().apply(subject(withStage(GOOD, 1, with(FINE, new RowPair(row(60), inside, 15, 12)))))
                        .stream().map(Finding::place).toList());
        RowSpec apart = row(60, mark(3, 8, Wear.WORN), mark(9, 12, Wear.BARRED), mark(5, 3, Wear.WORN));
        assertFindsNothing(new MarksOverlap(),
                subject(withStage(GOOD, 1, with(FINE, new RowPair(apart, row(30), 15, 12)))));
    }

    /** Half of 5 mm is 2.5 mm: of two such neighbours one could stand past the other. */
    @Test
    void findsAnIndexErrorOfHalfAPitch() {
        for (long error : new long[] {5 * MM / 2, -5 * MM / 2, Long.MIN_VALUE}) {
            AxisSpec bad = withStage(GOOD, 0, RACK.withErrors(IndexErrors.of(new TreeMap<>(Map.of(7, error)))));
            assertFinds(new IndexErrorTooLarge(), subject(bad), "index-error-too-large", Severity.ERROR,
                    Place.stage(0));
        }
        AxisSpec mended = withStage(GOOD, 0, RACK.withErrors(IndexErrors.of(new TreeMap<>(
                Map.of(7, 5 * MM / 2 - 1, 8, 1 - 5 * MM / 2)))));
        assertFindsNothing(new IndexErrorTooLarge(), subject(mended));
    }

    @Test
    void findsAMarkThatCoversNoTooth() {
        RowSpec swapped = row(60, mark(5, 3, Wear.WORN));
        Finding found = assertFinds(new WornOutsideRow(),
                subject(withStage(GOOD, 1, with(FINE, new RowPair(swapped, row(30), 15, 12)))), "worn-outside-row",
                Severity.WARNING, Place.worn(1, Place.Part.BASE_ROW, 0));
        assertTrue(found.sentence().contains("covers none"), found.sentence());
    }

    @Test
    void findsAStageWhoseEveryIndexIsBarred() {
        // With 20 of its 30 teeth engaged, the rider's teeth 10 to 19 are engaged at every index.
        RowSpec rider = row(30, mark(11, 18, Wear.BARRED));
        RowPair rows = new RowPair(row(60), rider, 15, 20);
        assertFinds(new AllBarred(), subject(withStage(GOOD, 1, with(FINE, rows))), "all-barred", Severity.ERROR,
                Place.stage(1));
        // With 11 it may hang over so far that only its teeth 19 to 29 are engaged.
        RowPair mended = new RowPair(row(60), rider, 15, 11);
        assertFindsNothing(new AllBarred(), subject(withStage(GOOD, 1, with(FINE, mended))));
    }

    @Test
    void findsACurrentSettingOfTheWrongLength() {
        assertFinds(new CurrentSize(), subject(GOOD, 0), "current-size", Severity.ERROR,
                Place.AXIS);
        assertFindsNothing(new CurrentSize(), subject(GOOD, 0, 0));
    }

    @Test
    void findsACurrentIndexOutOfRange() {
        for (int index : new int[] {-34, 34, Integer.MIN_VALUE, Integer.MAX_VALUE}) {
            assertFinds(new CurrentOutOfRange(), subject(GOOD, 0, index),
                    "current-out-of-range", Severity.WARNING, Place.stage(1));
        }
        for (int index : new int[] {-33, 33}) {
            assertFindsNothing(new CurrentOutOfRange(), subject(GOOD, 0, index));
        }
    }

    @Test
    void findsACurrentIndexOverBarredTeeth() {
        // Barred base tooth 50 lies under the 30 teeth of the rider from index 50 − 15 − 29 = 6 on.
        RowPair rows = new RowPair(row(60, mark(50, 50, Wear.BARRED)), row(30), 15, 12);
        AxisSpec axis = withStage(GOOD, 1, with(FINE, rows));
        assertFinds(new CurrentBarred(), subject(axis, 0, 6), "current-barred",
                Severity.WARNING, Place.stage(1));
        assertFindsNothing(new CurrentBarred(), subject(axis, 0, 5));
    }

    @Test
    void findsBodiesThatStandBeyondAShiftLimit() {
        AxisSpec limited = withLimits(GOOD, new ShiftLimit(1, 1, 49 * MM), new ShiftLimit(0, 1, 100 * MM));
        // 10 teeth of 4.9 mm are the limit; 11 are one too many. 20 teeth of 5 mm are the other.
        CurrentBeyondShiftLimit check = new CurrentBeyondShiftLimit();
        assertFindsNothing(check, subject(limited, 0, 10));
        assertFinds(check, subject(limited, 0, -11), "current-beyond-shift-limit",
                Severity.WARNING, Place.AXIS);
        assertEquals("Stages 1 to 2 together stand 104.900 mm off, beyond the shift limit of 100.000 mm; move back within "
                + "it before work is done there.", check.apply(subject(limited, 20, 1)).get(0)
                .sentence());
        assertFindsNothing(check, subject(limited, 20, 0));
        assertFindsNothing(check, subject(limited, 1000, 0));
    }

    @Test
    void findsACarriageThatStandsBeyondAStop() {
        AxisSpec stopped = withStops(GOOD, -10 * MM, 100 * MM);
        CurrentBeyondTravel check = new CurrentBeyondTravel();
        // 20 teeth of 5 mm end at the stop; 21 of them less one of 4.9 mm are 0.1 mm beyond it. −3 · 5 + 4.9 = −10.1 mm.
        assertFindsNothing(check, subject(stopped, 20, 0));
        assertFindsNothing(check, subject(stopped, -2, 0));
        Finding found = assertFinds(check, subject(stopped, 21, -1), "current-beyond-travel",
                Severity.WARNING, Place.AXIS);
        assertEquals("The carriage stands at 100.100 mm, 0.100 mm beyond the stop at 100.000 mm; move it back between the "
                + "stops, or correct the stop.", found.sentence());
        assertEquals("-10.000 mm", check.apply(subject(stopped, -3, 1)).get(0).limit());
        assertFindsNothing(check, subject(GOOD, 188, 33));
        assertFindsNothing(check, subject(stopped, 1000, 0));
        assertFindsNothing(check, subject(withStops(GOOD, 100 * MM, 99 * MM), 0, 0));
    }

    @Test
    void findsATableThatStandsBeyondAStopOnTheShorterWay() {
        RotaryScale scale = new RotaryScale(RotaryScale.ARC_SECONDS);
        AxisSpec ring = Stacks.axis(scale, Stacks.stage("ring", 3600, -180, 180));
        CurrentBeyondTravel check = new CurrentBeyondTravel();
        AxisSpec overZero = withStops(ring, 350 * 3600L, 10 * 3600L);
        for (int inside : new int[] {-10, 0, 10}) {
            assertFindsNothing(check, subject(overZero, inside));
        }
        assertEquals(new CurrentBeyondTravel.Overrun(10 * 3600L, 3600),
                CurrentBeyondTravel.overrun(overZero, Setting.of(11)).orElseThrow());
        assertEquals(new CurrentBeyondTravel.Overrun(350 * 3600L, 2 * 3600),
                CurrentBeyondTravel.overrun(overZero, Setting.of(-12)).orElseThrow());
        assertFindsNothing(check, subject(withStops(ring, 0L, 360 * 3600L - 1), 180));
    }

    /** The rows end at −201.7 and 1101.7 mm; see {@link #GOOD}. */
    @Test
    void findsASavedTargetBeyondTheTravel() {
        AxisSpec stopped = withStops(GOOD, -10 * MM, 100 * MM);
        TargetBeyondTravel check = new TargetBeyondTravel();
        Finding found = assertFinds(check, subject(stopped, new Stop("Far hole", 103 * MM, MM)), "target-beyond-travel",
                Severity.NOTE, Place.AXIS);
        assertEquals("The target “Far hole” at 103.000 mm lies 3.000 mm beyond the stop at 100.000 mm; correct it, or move "
                + "the stop.", found.sentence());
        assertFindsNothing(check, subject(stopped, new Stop("", 100 * MM, 0), new Stop("", 103 * MM, 3 * MM),
                new Stop("", -10 * MM, 0)));
        Finding below = assertFinds(check, subject(GOOD, new Stop("", -202 * MM, 0), new Stop("", 1101 * MM, 0)),
                "target-beyond-travel", Severity.NOTE, Place.AXIS);
        assertEquals("A target at -202.000 mm lies 0.300 mm beyond -201.700 mm, where the rows end; correct it, or lengthen "
                + "a row.", below.sentence());
        assertFindsNothing(check, subject(withStops(GOOD, 100 * MM, 99 * MM), new Stop("", 50 * MM, 0)));
    }

    /** Forty indices of 1° either way from 0° are positions from 320° up over 0° to 40°. */
    @Test
    void findsASavedTargetThatATableDoesNotTurnTo() {
        RotaryScale scale = new RotaryScale(RotaryScale.ARC_SECONDS);
        AxisSpec sector = Stacks.axis(scale, Stacks.stage("sector", 3600, -40, 40));
        TargetBeyondTravel check = new TargetBeyondTravel();
        Finding found = assertFinds(check, subject(sector, new Stop("Slot", 42 * 3600L, 3600), new Stop("", 350 * 3600L, 0)),
                "target-beyond-travel", Severity.NOTE, Place.AXIS);
        assertEquals(scale.format(40 * 3600L), found.limit());
        assertEquals(scale.format(320 * 3600L), check.apply(subject(sector, new Stop("", 318 * 3600L, 0))).get(0).limit());
        assertFindsNothing(check, subject(Stacks.axis(scale, Stacks.stage("ring", 3600, -180, 180)),
                new Stop("", 200 * 3600L, 0)));
    }

    @Test
    void findsReversedTravelLimitsOfALinearAxis() {
        assertFinds(new LimitsReversed(), subject(withStops(GOOD, 100 * MM, 99 * MM)), "limits-reversed",
                Severity.ERROR, Place.AXIS);
        assertFindsNothing(new LimitsReversed(), subject(withStops(GOOD, 99 * MM, 99 * MM)));
    }

    @Test
    void takesReversedLimitsOfARotaryAxisAsAnArcOverZero() {
        RotaryScale scale = new RotaryScale(RotaryScale.ARC_SECONDS);
        AxisSpec ring = withStops(Stacks.axis(scale, Stacks.stage("ring", 3600, -90, 90)), 350 * 3600L, 10 * 3600L);
        assertFindsNothing(new LimitsReversed(), subject(ring));
    }

    @Test
    void findsTravelLimitsOutsideWhatTheRowsAllow() {
        long lowest = -8 * 5 * MM - 33 * 49 * MM / 10;
        long highest = 188 * 5 * MM + 33 * 49 * MM / 10;
        assertFinds(new LimitsOutsideRows(), subject(withStops(GOOD, lowest - 1, null)), "limits-outside-rows",
                Severity.WARNING, Place.AXIS);
        assertFinds(new LimitsOutsideRows(), subject(withStops(GOOD, null, highest + 1)), "limits-outside-rows",
                Severity.WARNING, Place.AXIS);
        assertFinds(new LimitsOutsideRows(), subject(withStops(GOOD, highest + 1, null)), "limits-outside-rows",
                Severity.ERROR, Place.AXIS);
        assertFinds(new LimitsOutsideRows(), subject(withStops(GOOD, null, lowest - 1)), "limits-outside-rows",
                Severity.ERROR, Place.AXIS);
        assertFindsNothing(new LimitsOutsideRows(), subject(withStops(GOOD, lowest, highest)));
    }

    @Test
    void notesADatumOutsideTheTravelLimits() {
        AxisSpec axis = withStops(GOOD, 0L, 500 * MM);
        assertFinds(new DatumOutsideLimits(), subject(withDatum(axis, -1)), "datum-outside-limits", Severity.NOTE,
                Place.AXIS);
        assertFinds(new DatumOutsideLimits(), subject(withDatum(axis, 500 * MM + 1)), "datum-outside-limits",
                Severity.NOTE, Place.AXIS);
        assertFindsNothing(new DatumOutsideLimits(), subject(axis));
        assertFindsNothing(new DatumOutsideLimits(), subject(withDatum(axis, 500 * MM)));
    }

    @Test
    void findsEqualPitchesInNeighbours() {
        AxisSpec bad = withStage(GOOD, 1, withPitch(FINE, 5 * MM));
        assertFinds(new EqualPitches(), subject(bad), "equal-pitches", Severity.WARNING, Place.stage(1));
        assertFindsNothing(new EqualPitches(), subject(withStage(GOOD, 1, withPitch(FINE, 5 * MM - 1))));
        StageSpec second = new StageSpec("second", Source.BOUGHT, 5 * MM, 5 * MM, RACK.rows(), COST);
        assertFindsNothing(new EqualPitches(), subject(Stacks.axis(RACK, second)));
    }

    @Test
    void findsFewerFineSettingsThanTheStepNeeds() {
        // 67 fine settings within 5 mm: 5/67 = 0.0746… mm, so 0.075 mm needs 67 and 0.07 mm needs 72.
        Finding found = assertFinds(new TooFewFineSettings(), subject(withSteps(GOOD, 0, 70 * UM)),
                "too-few-fine-settings", Severity.WARNING, Place.AXIS);
        assertEquals("67 fine settings", found.value());
        assertEquals("72 fine settings", found.limit());
        assertFindsNothing(new TooFewFineSettings(), subject(withSteps(GOOD, 0, 75 * UM)));
    }

    @Test
    void needsFewerFineSettingsWhereTheTravelIsShorterThanAPitch() {
        // 67 fine settings: 4.69 mm of travel in steps of 0.07 mm, and no more.
        AxisSpec axis = withSteps(GOOD, 0, 70 * UM);
        assertFindsNothing(new TooFewFineSettings(), subject(withStops(axis, MM, MM + 67 * 70 * UM)));
        Finding found = assertFinds(new TooFewFineSettings(), subject(withStops(axis, MM, MM + 67 * 70 * UM + 1)),
                "too-few-fine-settings", Severity.WARNING, Place.AXIS);
        assertEquals("68 fine settings", found.limit());
    }

    @Test
    void countsFineSettingsWithoutBarredTeethAndWithinTheShiftLimits() {
        // ±15 mm of shift at 4.9 mm leaves indices −3…3.
        AxisSpec limited = withLimits(withSteps(GOOD, 0, 700 * UM), new ShiftLimit(1, 1, 15 * MM));
        Finding found = assertFinds(new TooFewFineSettings(), subject(limited), "too-few-fine-settings",
                Severity.WARNING, Place.AXIS);
        assertEquals("7 fine settings", found.value());
        assertEquals("8 fine settings", found.limit());
        // The barred tooth bars indices 6…33.
        RowPair rows = new RowPair(row(60, mark(50, 50, Wear.BARRED)), row(30), 15, 12);
        AxisSpec barred = withStage(withSteps(GOOD, 0, 100 * UM), 1, with(FINE, rows));
        assertEquals("39 fine settings", new TooFewFineSettings().apply(subject(barred)).get(0).value());
    }

    /**
     * A 2.54 mm rack with a 5/4.9 mm pair of 20 indices each that stays within 15 mm: 115 fine settings miss a grid of
     * 20 µm, which needs 127.
     */
    @Test
    void findsThatTheStudiedRackMissesItsGrid() {
        AxisSpec rack = withLimits(Stacks.axis(Stacks.stage("rack", 254 * MM / 100, 0, 999),
                Stacks.stage("lower", 5 * MM, -9, 10), Stacks.stage("upper", 49 * MM / 10, -9, 10)),
                new ShiftLimit(1, 2, 15 * MM));
        Finding found = assertFinds(new TooFewFineSettings(), subject(withSteps(rack, 0, 20 * UM)),
                "too-few-fine-settings", Severity.WARNING, Place.AXIS);
        assertEquals("127 fine settings", found.limit());
    }

    @Test
    void findsTeethTooSmallForThePrintedLine() {
        // ISO 53 type A: tip land 0.842856 m, root gap 0.660871 m; at 1.9 mm they are 0.5097 and 0.3997 mm.
        List<Finding> both = new ToothTooSmall().apply(subject(withStage(GOOD, 1, withPitch(FINE, 19 * MM / 10))));
        assertEquals(List.of("0.510 mm", "0.400 mm"), both.stream().map(Finding::value).toList());
        assertEquals(List.of("0.800 mm", "0.400 mm"), both.stream().map(Finding::limit).toList());
        // 0.1 in: tip 0.681 mm, too little for two lines, gap 0.534 mm, enough for one.
        Finding inch = assertFinds(new ToothTooSmall(), subject(withStage(GOOD, 1, withPitch(FINE, 254 * MM / 100))),
                "tooth-too-small", Severity.WARNING, Place.stage(1));
        assertEquals("0.681 mm", inch.value());
        // Two lines of 0.4 mm fit from a pitch of 2.98 mm (m ≥ 0.949) on.
        assertEquals(1, new ToothTooSmall().apply(subject(withStage(GOOD, 1, withPitch(FINE, 298 * MM / 100)))).size());
        assertFindsNothing(new ToothTooSmall(), subject(withStage(GOOD, 1, withPitch(FINE, 299 * MM / 100))));
        StageSpec bought = new StageSpec("bought", Source.BOUGHT, MM, MM, RACK.rows(), COST);
        assertFindsNothing(new ToothTooSmall(), subject(withStage(GOOD, 0, bought)));
    }

    @Test
    void findsSlotsThatLeaveTooLittleOfATip() {
        SlotNotPrintable check = new SlotNotPrintable();
        // ISO 53 type A at 5 mm: the tip is 5/π · 0.842856 = 1.341447 mm wide; a slot of 1 mm leaves 0.170724 mm twice.
        ToothForm tooth = ToothForm.of(BasicRack.A, 5);
        Finding thin = assertFinds(check, slotted(tooth.eased(0, 0, 1)), "leaf-too-thin", Severity.WARNING, Place.stage(1));
        assertEquals("Each leaf beside the slot of stage “fine” is 0.171 mm wide at the tip, less than the 0.400 mm of a"
                + " printed line; a slot from 0.400 mm to 0.541 mm can be printed.", thin.sentence());
        assertFindsNothing(check, slotted(tooth.eased(0, 0, 0.54)));
        assertFindsNothing(check, slotted(tooth.eased(0, 0, 0.4)));
        assertFindsNothing(check, slotted(tooth));
        assertEquals("slot-too-narrow", check.apply(slotted(tooth.eased(0, 0, 0.39))).get(0).id());
        // A tip relief of 0.1 mm takes 0.1/cos 20° on both sides: 1.128613 mm are left.
        assertEquals("0.314 mm", check.apply(slotted(tooth.eased(0.1, 0, 0.5))).get(0).value());
    }

    @Test
    void aTipOfLessThanThreeLinesTakesNoSlotAtAll() {
        SlotNotPrintable check = new SlotNotPrintable();
        // At 4 mm the tip is 1.073158 mm wide, a third of it 0.357719 mm.
        ToothForm tooth = ToothForm.of(BasicRack.A, 4);
        assertEquals("Each leaf beside the slot of stage “fine” is 0.337 mm wide at the tip, less than the 0.400 mm of a"
                + " printed line; leave the slot out, or print with lines of 0.358 mm or less, or take a larger pitch.",
                check.apply(slotted(tooth.eased(0, 0, 0.4))).get(0).sentence());
        assertEquals("The slot of stage “fine” is 2.000 mm wide and leaves nothing of the tip, which is 1.073 mm wide; leave"
                + " the slot out, or print with lines of 0.358 mm or less, or take a larger pitch.",
                check.apply(slotted(tooth.eased(0, 0, 2))).get(0).sentence());
    }

    private static Subject slotted(ToothForm form) {
        return new Subject(GOOD, Setting.zero(2), LINE_M, Map.of(1, form), List.of());
    }

    @Test
    void findsShiftLimitsThatNameNoStages() {
        for (ShiftLimit limit : List.of(new ShiftLimit(-1, 0, MM), new ShiftLimit(1, 2, MM), new ShiftLimit(1, 0, MM))) {
            assertFinds(new ShiftLimitStages(), subject(withLimits(GOOD, limit)), "shift-limit-stages", Severity.ERROR,
                    Place.AXIS);
        }
        assertFindsNothing(new ShiftLimitStages(), subject(withLimits(GOOD, new ShiftLimit(0, 1, MM))));
    }

    @Test
    void findsANegativeShiftLimit() {
        assertFinds(new ShiftLimitNegative(), subject(withLimits(GOOD, new ShiftLimit(0, 1, -1))),
                "shift-limit-negative", Severity.ERROR, Place.AXIS);
        assertFindsNothing(new ShiftLimitNegative(), subject(withLimits(GOOD, new ShiftLimit(0, 1, 0))));
    }

    @Test
    void findsNegativeToleranceAndStep() {
        assertFinds(new ToleranceNegative(), subject(withSteps(GOOD, -1, MM)), "tolerance-negative", Severity.ERROR,
                Place.AXIS);
        assertFindsNothing(new ToleranceNegative(), subject(withSteps(GOOD, 0, MM)));
        assertFinds(new WantedStepNotPositive(), subject(withSteps(GOOD, 0, 0)), "wanted-step-not-positive",
                Severity.WARNING, Place.AXIS);
        assertFindsNothing(new WantedStepNotPositive(), subject(withSteps(GOOD, 0, 1)));
    }

    @Test
    void findsNumbersTooLargeToPlanWith() {
        NumbersTooLarge check = new NumbersTooLarge();
        assertFinds(check, subject(withDatum(GOOD, Long.MIN_VALUE)), "numbers-too-large", Severity.ERROR, Place.AXIS);
        assertFinds(check, subject(withStage(GOOD, 1, withPitch(FINE, Long.MAX_VALUE))), "numbers-too-large",
                Severity.ERROR, Place.AXIS);
        assertFinds(check, subject(withStage(GOOD, 1, with(FINE, new EffortCost(0, Long.MAX_VALUE)))),
                "numbers-too-large", Severity.ERROR, Place.AXIS);
        RowPair longRow = new RowPair(row(Integer.MAX_VALUE), row(30), 15, 12);
        assertFinds(check, subject(withStage(GOOD, 1, with(FINE, longRow))), "numbers-too-large", Severity.ERROR,
                Place.stage(1));
        // Exactly at the bound, where the rows meet by their last tooth: 199 of 5 mm and 44 of 4.9 mm with the datum.
        long rest = Soundness.FARTHEST - 199 * 5 * MM - 44 * 49 * MM / 10;
        assertFinds(check, subject(withDatum(GOOD, rest + 1)), "numbers-too-large", Severity.ERROR, Place.AXIS);
        assertFindsNothing(check, subject(withDatum(GOOD, rest)));
    }

    @Test
    void saysNothingOfTheFarSideWhenTheWantedStepIsAbsent() {
        AxisSpec none = new AxisSpec("a", GOOD.scale(), GOOD.stages(), 0, OptionalLong.empty(), OptionalLong.empty(),
                List.of(), 0, OptionalLong.empty());
        assertFindsNothing(new TooFewFineSettings(), subject(none));
    }

    private static Subject subject(AxisSpec axis) {
        return new Subject(axis, Setting.zero(axis.stages().size()), LINE_M);
    }

    private static Subject subject(AxisSpec axis, Stop... targets) {
        return new Subject(axis, Setting.zero(axis.stages().size()), LINE_M, Map.of(), List.of(targets));
    }

    private static Subject subject(AxisSpec axis, int... indices) {
        return new Subject(axis, Setting.of(indices), LINE_M);
    }

    /** The check finds one thing, and running all checks finds it too. */
    private static Finding assertFinds(Check check, Subject subject, String id, Severity severity, Place place) {
        List<Finding> found = check.apply(subject);
        assertEquals(1, found.size(), () -> "found " + found);
        Finding finding = found.get(0);
        assertEquals(id, finding.id());
        assertEquals(severity, finding.severity());
        assertEquals(place, finding.place());
        assertTrue(finding.sentence().endsWith("."), finding.sentence());
        assertTrue(finding.sentence().contains(finding.value().split(" ")[0]) || id.equals("all-barred")
                || id.equals("no-stage") || id.equals("numbers-too-large"), finding.sentence());
        assertTrue(Checks.run(subject).contains(finding));
        return finding;
    }

    private static void assertFindsNothing(Check check, Subject subject) {
        assertEquals(List.of(), check.apply(subject));
    }
}
