// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

import pitchstack.core.coverage.Reached;

/**
 * What one column of pixels stands for: which shares of it are reached in which way. They add up to 1, or to 0 outside
 * the travel.
 *
 * @param clean the share reached over clean teeth, from 0 to 1
 * @param worn the share reached only over worn teeth
 * @param not the share not reached, without what is lost
 * @param lost the share not reached that is reached in what it is compared with
 */
public record Column(double clean, double worn, double not, double lost) {
    /** All of it lost. */
    public static final Column LOST = new Column(0, 0, 0, 1);
    /** Outside the travel. */
    public static final Column OUTSIDE = new Column(0, 0, 0, 0);

    private static final Column CLEAN = new Column(1, 0, 0);
    private static final Column WORN = new Column(0, 1, 0);
    private static final Column NOT = new Column(0, 0, 1);

    /** What is compared with nothing. */
    public Column(double clean, double worn, double not) {
        this(clean, worn, not, 0);
    }

    /** All of it reached in one way. */
    public static Column of(Reached reached) {
        return switch (reached) {
            case CLEAN -> CLEAN;
            case WORN -> WORN;
            case NOT -> NOT;
        };
    }

    /** Whether it stands for positions that are reached in different ways. */
    public boolean isMixed() {
        return Math.max(Math.max(clean, lost), Math.max(worn, not)) < 1 && !equals(OUTSIDE);
    }
}
