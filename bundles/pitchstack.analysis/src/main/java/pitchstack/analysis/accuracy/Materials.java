// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pitchstack.core.accuracy.material.Material;

/** Materials by the names that people give them. */
public final class Materials {
    private static final Map<String, Material> OTHER_NAMES = Map.ofEntries(
            Map.entry("cast iron", Material.CAST_IRON), Map.entry("iron", Material.CAST_IRON),
            Map.entry("carbon steel", Material.STEEL), Map.entry("aluminum", Material.ALUMINIUM),
            Map.entry("pa", Material.NYLON), Map.entry("pa12", Material.NYLON), Map.entry("pa6", Material.NYLON),
            Map.entry("polyamide", Material.NYLON), Map.entry("pom", Material.ACETAL));

    private Materials() {
    }

    /** The material of a name, capitals or not; nothing for one without usual numbers. */
    public static Optional<Material> named(String name) {
        String wanted = name == null ? "" : name.strip().toLowerCase(Locale.ROOT);
        return Material.USUAL.stream().filter(material -> material.name().toLowerCase(Locale.ROOT).equals(wanted)).findFirst()
                .or(() -> Optional.ofNullable(OTHER_NAMES.get(wanted)));
    }

    /** What is taken for one, in a sentence. */
    static String sentence(Material material) {
        String swelling = material.swells() ? String.format(Locale.ROOT, "; moisture makes it %.1f to %.1f %% longer, which is"
                + " not counted", 100 * material.leastSwelling(), 100 * material.mostSwelling()) : "";
        return String.format(Locale.ROOT, "Usual numbers of %s, not measured: it grows by %.1f ± %.1f ppm/K (1 σ)%s.",
                material.name(), material.expansion().perK() * 1e6, material.expansion().uncertaintyPerK() * 1e6, swelling);
    }

    /** What is taken for its stiffness, in a sentence. */
    static String stiffness(Material material) {
        return String.format(Locale.ROOT, "Usual stiffness of %s, not measured: E = %.1f GPa ± %.0f %%.", material.name(),
                material.elasticity().youngPa() / 1e9, 100 * material.youngSpread());
    }
}
