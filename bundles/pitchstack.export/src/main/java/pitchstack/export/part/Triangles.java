// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import pitchstack.core.geometry.solid.Node;
import pitchstack.core.geometry.solid.TriangleSink;

/** The triangles of a solid as 3MF. */
record Triangles(Chunks model, Passes passes) implements TriangleSink {
    @Override
    public void node(Node node) {
        // They stand in the file already.
    }

    @Override
    public void triangle(Node a, Node b, Node c) {
        model.add("<triangle v1=\"").add(a.index()).add("\" v2=\"").add(b.index()).add("\" v3=\"").add(c.index())
                .add("\"/>\n");
    }

    @Override
    public boolean goesOn(double share) {
        return passes.goesOn(share);
    }
}
