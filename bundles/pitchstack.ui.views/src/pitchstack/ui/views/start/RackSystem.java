// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.start;

import java.util.stream.Stream;

/** How the pitch of a rack at hand is known. */
enum RackSystem {
    /** There is none. */
    NONE("none; print one", "", "", "", null),
    /** Millimetres a tooth. */
    MILLIMETRES("tooth spacing in mm", "", " mm", "such as 5", false),
    /** Inches a tooth, as racks of circular pitch are sold. */
    CIRCULAR("circular pitch in inches", "", " in CP", "such as 1/4", false),
    /** Module. */
    MODULE("module", "module ", "", "such as 1", false),
    /** Teeth an inch of pitch diameter. */
    DIAMETRAL("diametral pitch (DP)", "", " DP", "such as 24", false),
    /** A ring. */
    RING("teeth in the whole ring", "", " per turn", "such as 360", true);

    private final String label;
    private final String before;
    private final String after;
    private final String example;
    private final Boolean rotary;

    RackSystem(String label, String before, String after, String example, Boolean rotary) {
        this.label = label;
        this.before = before;
        this.after = after;
        this.example = example;
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

    /** A number that might be typed; nothing where none is. */
    String example() {
        return example;
    }

    /** The pitch as a file states it; what ends in a letter has its unit already. */
    String pitch(String number) {
        String typed = number.strip();
        boolean whole = !typed.isEmpty() && Character.isLetter(typed.charAt(typed.length() - 1));
        return this == NONE ? "" : whole ? typed : before + typed + after;
    }
}
