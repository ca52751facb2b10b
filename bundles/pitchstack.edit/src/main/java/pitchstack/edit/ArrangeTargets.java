// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import pitchstack.model.Axis;
import pitchstack.model.Target;

/**
 * Puts the targets of an axis into another order.
 *
 * @param axis the axis
 * @param order all its targets, each once
 * @param label what the person did
 */
public record ArrangeTargets(Axis axis, List<Target> order, String label) implements Edit {
    /** Copies the order; refuses one that is not of the axis's targets. */
    public ArrangeTargets {
        order = List.copyOf(order);
        if (order.size() != axis.getTargets().size() || !new HashSet<>(order).equals(new HashSet<>(axis.getTargets()))) {
            throw new IllegalArgumentException("Not an order of the targets of the axis");
        }
    }

    /**
     * Moves some targets by one place, each unless it stands at the end or behind others that do.
     *
     * @param axis the axis
     * @param moved which of its targets
     * @param down towards the end of the list, or else towards its beginning
     */
    public static ArrangeTargets byOne(Axis axis, Collection<Target> moved, boolean down) {
        List<Target> order = new ArrayList<>(axis.getTargets());
        if (down) {
            Collections.reverse(order);
        }
        for (int i = 1; i < order.size(); i++) {
            if (moved.contains(order.get(i)) && !moved.contains(order.get(i - 1))) {
                Collections.swap(order, i - 1, i);
            }
        }
        if (down) {
            Collections.reverse(order);
        }
        String what = moved.size() == 1 ? "target “" + name(moved.iterator().next()) + "”" : moved.size() + " targets";
        return new ArrangeTargets(axis, order, "Move " + what + (down ? " down" : " up"));
    }

    private static String name(Target target) {
        return target.getName() == null ? "" : target.getName();
    }

    /** Whether nothing would change. */
    public boolean isIdle() {
        return order.equals(axis.getTargets());
    }

    @Override
    public void apply() {
        for (int i = 0; i < order.size(); i++) {
            axis.getTargets().move(i, order.get(i));
        }
    }
}
