// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry;

/** Which row of a mating pair. */
public enum Side {
    /** The row below, its teeth up. */
    BASE("base"),
    /** The row on the underside of the moved body, its teeth down. */
    RIDER("rider");

    private final String word;

    Side(String word) {
        this.word = word;
    }

    /** The word for it. */
    public String word() {
        return word;
    }
}
