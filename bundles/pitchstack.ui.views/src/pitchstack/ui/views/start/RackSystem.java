// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.util.stream.Stream;

/** How the pitch of a rack at hand is known. */
enum RackSystem {
    /** There is none. */
    NONE("none; print one", "", "", null),
    /** Millimetres a tooth. */
    MILLIMETRES("tooth spacing in mm", "", " mm", false),
    /** Inches a tooth, as racks of circular pitch are sold. */
    CIRCULAR("circular pitch in inches", "", " in CP", false),
    /** Module. */
    MODULE("module", "module ", "", false),
    /** Teeth an inch of pitch diameter. */
    DIAMETRAL("diametral pitch (DP)", "", " DP", false),
    /** A ring. */
    RING("teeth in the whole ring", "", " per turn", true);

    private final String label;
    private final String before;
    private final String after;
    private final Boolean rotary;

    RackSystem(String label, String before, String after, Boolean rotary) {
        this.label = label;
        this.before = before;
        this.after = after;
        this.rotary = rotary;
    }

    /** The systems that suit a kind of axis. */
    static RackSystem[] of(boolean rotary) {
        return Stream.of(values()).filter(system -> system.rotary == null || system.rotary == rotary)
                .toArray(RackSystem[]::new);
    }

    /** What it is called on screen. */
    String label() {
        return label;
    }

    /** The pitch as a file states it. */
    String pitch(String number) {
        return this == NONE ? "" : before + number.strip() + after;
    }
}
