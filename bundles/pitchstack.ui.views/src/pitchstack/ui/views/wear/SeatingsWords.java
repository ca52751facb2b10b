// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import pitchstack.core.coverage.RackShift;
import pitchstack.core.coverage.RowSeatings;

/**
 * Puts a forecast of seatings into sentences.
 *
 * @param load what was counted
 * @param times how many runs
 */
record SeatingsWords(Load load, int times) {
    /** Stretches of most used teeth that are named. */
    private static final int MOST_SPANS = 3;

    /** The most used teeth; empty where none is used. */
    static String mostUsed(RowSeatings row) {
        return row.mostUsed(MOST_SPANS);
    }

    /** The title of the bars of a row. */
    String title(RowSeatings row) {
        return row.most() == 0 ? "No tooth of this row is seated." : "Most used: "
                + (row.teeth(row.most()) == 1 ? "tooth " : "teeth ") + mostUsed(row) + ", " + count((long) row.most() * times);
    }

    /** What it is, and what it rests on. */
    String forecast() {
        int settings = load.settings().size();
        return "A forecast by counting, not a measurement of wear: " + settings
                + (settings == 1 ? " setting" : " settings") + (times == 1 ? "" : ", " + times + " times")
                + (load.leftOut() == 0 ? "." : load.leftOut() == 1 ? "; 1 target is not reached."
                        : "; " + load.leftOut() + " targets are not reached.");
    }

    /** What a shift of the base row would do. */
    String shift(RackShift shift) {
        return "As much again with the start tooth " + (shift.teeth() > 0 ? "raised by " : "lowered by ")
                + Math.abs(shift.teeth()) + ": at most " + count((long) shift.shifted() * times)
                + " on a tooth of its base row, instead of " + (long) shift.unshifted() * times + "."
                + spoilt(shift.beyond(), "would leave too few teeth engaged")
                + spoilt(shift.barred(), "would stand over barred teeth") + spoilt(shift.worn(), "would stand over worn teeth");
    }

    private String spoilt(int settings, String how) {
        return settings == 0 ? "" : " " + settings + " of " + load.settings().size() + " settings " + how + ".";
    }

    private static String count(long seatings) {
        return seatings == 1 ? "1 seating" : seatings + " seatings";
    }
}
