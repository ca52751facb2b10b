// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.stack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** One index for each stage of an axis, lowest stage first. */
public final class Setting implements Comparable<Setting> {
    private final int[] indices;

    private Setting(int[] indices) {
        this.indices = indices;
    }

    /** A setting of these indices, lowest stage first. */
    public static Setting of(int... indices) {
        return new Setting(indices.clone());
    }

    /** Every one of the stages at index 0. */
    public static Setting zero(int stages) {
        return new Setting(new int[stages]);
    }

    /** How many stages there are. */
    public int size() {
        return indices.length;
    }

    /** The index of a stage, counted from the lowest, 0. */
    public int index(int stage) {
        return indices[stage];
    }

    /** The same setting with one stage at another index. */
    public Setting with(int stage, int index) {
        int[] changed = indices.clone();
        changed[stage] = index;
        return new Setting(changed);
    }

    /** A copy of the indices. */
    public int[] toArray() {
        return indices.clone();
    }

    /** The indices as a list. */
    public List<Integer> toList() {
        List<Integer> list = new ArrayList<>(indices.length);
        for (int index : indices) {
            list.add(index);
        }
        return list;
    }

    /** Compares the indices in stage order, the last resort among equal settings. */
    @Override
    public int compareTo(Setting other) {
        return Arrays.compare(indices, other.indices);
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Setting s && Arrays.equals(indices, s.indices);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(indices);
    }

    @Override
    public String toString() {
        return Arrays.toString(indices);
    }
}
