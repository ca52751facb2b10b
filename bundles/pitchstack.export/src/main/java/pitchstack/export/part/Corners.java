// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import pitchstack.core.geometry.solid.Node;
import pitchstack.core.geometry.solid.TriangleSink;

/** The corners of a solid as 3MF. */
record Corners(Chunks model, Passes passes) implements TriangleSink {
    @Override
    public void node(Node node) {
        model.add("<vertex x=\"").add(node.x()).add("\" y=\"").add(node.y()).add("\" z=\"").add(node.z()).add("\"/>\n");
    }

    @Override
    public void triangle(Node a, Node b, Node c) {
        // They come after the corners, when the solid is sent again.
    }

    @Override
    public boolean goesOn(double share) {
        return passes.goesOn(share);
    }
}
