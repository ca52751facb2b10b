// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.coverage.strip;

/**
 * What each pixel of the strip shows. A clean stretch is a full bar, one over worn teeth a lower, hatched one, one not
 * reached a flat line, and one that is lost against something else a full bar of crossed hatching. A column that stands for several is stacked from its shares of such bars, clean ones lowest, with
 * a pale part on top for what is not reached; so a mixed column comes to look like a pure one as its share grows.
 */
public final class StripPixels {
    /** How a pixel is painted. */
    public enum Paint {
        /** Nothing. */
        GROUND,
        /** Reached over clean teeth. */
        CLEAN,
        /** Between the hatching of worn teeth. */
        WORN,
        /** The hatching of worn teeth. */
        HATCH,
        /** Not reached. */
        NOT,
        /** Not reached, in a column that stands for several. */
        MIXED,
        /** The crossed hatching of what is lost. */
        LOST
    }

    private static final double WORN_HEIGHT = 0.6;
    private static final double NOT_HEIGHT = 0.12;
    private static final int HATCH_PX = 5;
    private static final int HATCH_LINE_PX = 2;

    private final Column[] columns;
    private final int height;

    /**
     * @param columns the columns from left to right
     * @param height how high the strip is, in pixels, above 0
     */
    public StripPixels(Column[] columns, int height) {
        this.columns = columns;
        this.height = height;
    }

    /**
     * One pixel.
     *
     * @param x from the left, from 0
     * @param y from the top, from 0
     */
    public Paint at(int x, int y) {
        Column column = columns[x];
        double up = (height - y - 0.5) / height;
        if (column.isMixed()) {
            return mixed(column, up, x, y);
        }
        if (column.clean() == 1) {
            return Paint.CLEAN;
        }
        if (column.worn() == 1) {
            return up < WORN_HEIGHT ? hatched(x, y) : Paint.GROUND;
        }
        if (column.lost() == 1) {
            return crossed(x, y);
        }
        return column.not() == 1 && (up < NOT_HEIGHT || y == height - 1) ? Paint.NOT : Paint.GROUND;
    }

    private static Paint mixed(Column column, double up, int x, int y) {
        double reached = column.clean() + WORN_HEIGHT * column.worn();
        if (up < reached) {
            return up < column.clean() ? Paint.CLEAN : hatched(x, y);
        }
        double bars = reached + column.lost();
        if (up < bars) {
            return crossed(x, y);
        }
        return up < bars + column.not() ? Paint.MIXED : Paint.GROUND;
    }

    private static Paint crossed(int x, int y) {
        return (x + y) % HATCH_PX == 0 || Math.floorMod(x - y, HATCH_PX) == 0 ? Paint.LOST : Paint.GROUND;
    }

    private static Paint hatched(int x, int y) {
        return (x + y) % HATCH_PX < HATCH_LINE_PX ? Paint.HATCH : Paint.WORN;
    }
}
