// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.geometry.solid;

import java.util.List;

/**
 * The corners that stand over one point of the side view.
 *
 * @param nodes from the lowest to the highest; two at least
 */
record Column(List<Node> nodes) {
    Node low() {
        return nodes.get(0);
    }

    Node high() {
        return nodes.get(nodes.size() - 1);
    }
}
