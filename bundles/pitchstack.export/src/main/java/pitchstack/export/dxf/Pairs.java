// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import pitchstack.export.Decimals;

/** Pairs of a code and a value, a line each: the whole grammar of DXF. */
final class Pairs {
    /** A picometre: far below what a position is held to. */
    private static final int PLACES = 9;
    private static final String END = "\r\n";

    private final StringBuilder text = new StringBuilder();

    /** A value that is text, already in ASCII. */
    Pairs pair(int code, String value) {
        text.append(code).append(END).append(value).append(END);
        return this;
    }

    /** A value that is a whole number. */
    Pairs pair(int code, int value) {
        return pair(code, Integer.toString(value));
    }

    /** A value that is a length, an angle or a ratio; it always has a decimal point. */
    Pairs pair(int code, double value) {
        text.append(code).append(END);
        int start = text.length();
        Decimals.append(text, value, PLACES);
        text.append(text.indexOf(".", start) < 0 ? ".0" : "").append(END);
        return this;
    }

    /**
     * A point in the plane, with the height 0 that a reader may ask for.
     *
     * @param which 0 for the first point of an entity, 1 for the second
     */
    Pairs point(int which, double x, double y) {
        return pair(10 + which, x).pair(20 + which, y).pair(30 + which, 0.0);
    }

    /** Begins a section. */
    Pairs section(String name) {
        return pair(0, "SECTION").pair(2, name);
    }

    /** Begins a table of so many entries. */
    Pairs table(String name, int entries) {
        return pair(0, "TABLE").pair(2, name).pair(70, entries);
    }

    /** All pairs of another list. */
    Pairs all(Pairs others) {
        text.append(others.text);
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
