// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.List;

/** All the checks. They return findings whatever the numbers are, and never throw. */
public final class Checks {
    private static final List<Check> ALL = List.of(
            new NoStage(), new PitchNotPositive(), new IndexErrorTooLarge(), new RowWithoutTeeth(),
            new CostNegative(), new MinimumEngagedBelowOne(), new RowsNeverMeet(), new FewEngaged(), new WornOutsideRow(),
            new MarksOverlap(), new AllBarred(), new CurrentSize(), new CurrentOutOfRange(), new CurrentBarred(), new LimitsReversed(),
            new LimitsOutsideRows(), new DatumOutsideLimits(), new EqualPitches(), new TooFewFineSettings(),
            new ToothTooSmall(), new SlotNotPrintable(), new ShiftLimitStages(), new ShiftLimitNegative(),
            new CurrentBeyondShiftLimit(), new CurrentBeyondTravel(), new TargetBeyondTravel(),
            new ToleranceNegative(), new WantedStepNotPositive(), new NumbersTooLarge());

    private Checks() { }

    /** Every check, in the order in which its findings are listed. */
    public static List<Check> all() {
        return ALL;
    }

    /**
     * Looks at an axis with every check.
     *
     * @param subject the axis and what is known of the shop
     * @return what was found, in the order of {@link #all}; empty where all is well
     */
    public static List<Finding> run(Subject subject) {
        return ALL.stream().flatMap(check -> check.apply(subject).stream()).toList();
    }
}
