// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.wear;

import pitchstack.core.coverage.RackShift;
import pitchstack.ui.views.wear.Load.RowLoad;

/**
 * Puts a forecast of seatings into sentences.
 *
 * @param load what was counted
 * @param times how many runs
 */
record SeatingsWords(Load load, int times) {
    /** The title of the bars of a row. */
    String title(RowLoad row) {
        return row.most() == 0 ? "No tooth of this row is seated." : "Most used: "
                + (row.mostUsed().matches("\\d+") ? "tooth " : "teeth ") + row.mostUsed() + ", " + count((long) row.most() * times);
    }

    /** What it is, and what it rests on. */
    String forecast() {
        int settings = load.settings().size();
        return "A forecast by counting, not a measurement of wear: " + settings
                + (settings == 1 ? " setting" : " settings") + (times == 1 ? "" : ", " + times + " times")
                + (load.leftOut() == 0 ? "." : load.leftOut() == 1 ? "; 1 target is not reached."
                        : "; " + load.leftOut() + " targets are not reached.");
    }

    /** What a shift of a base row would do. */
    String shift(RackShift shift, String row) {
        String by = Math.abs(shift.teeth()) + (Math.abs(shift.teeth()) == 1 ? " tooth" : " teeth");
        String most = "Run as often again after the start tooth of the " + row + " is "
                + (shift.teeth() > 0 ? "raised" : "lowered") + " by " + by + ", and its most used tooth comes to "
                + count((long) shift.shifted() * times) + " instead of " + count((long) shift.unshifted() * times) + ".";
        return most + spoilt(shift.beyond(), "would leave too few teeth engaged") + spoilt(shift.barred(),
                "would stand over barred teeth") + spoilt(shift.worn(), "would stand over worn teeth");
    }

    private String spoilt(int settings, String how) {
        return settings == 0 ? "" : " " + settings + " of " + load.settings().size() + " settings " + how + ".";
    }

    private static String count(long seatings) {
        return seatings == 1 ? "1 seating" : seatings + " seatings";
    }
}
