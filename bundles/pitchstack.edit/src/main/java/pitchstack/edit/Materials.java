// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.stream.Collectors;
import pitchstack.core.accuracy.material.Material;

/** The materials that the program knows, for the tips of fields. */
final class Materials {
    /** A sentence of their names. */
    static final String USUAL = Material.USUAL.stream().map(Material::name).collect(Collectors.joining(", "))
            + "; of any other only what is typed is known.";

    private Materials() {
    }
}
