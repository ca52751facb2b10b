// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.thermal;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;

/**
 * How much a chain of lengths grows: Σ L·α·ΔT. Lengths back count as negative, so that the work, or a stage that moves
 * back, takes away. Parts of one material share its coefficient and what is not known of it.
 *
 * @param valueM growth, positive where the chain becomes longer
 * @param uncertaintyM its standard uncertainty, from coefficients and temperature
 */
public record Growth(double valueM, double uncertaintyM) {
    /**
     * One length of the chain.
     *
     * @param lengthM at 20 °C, with its sign
     * @param expansion of its material
     */
    public record Part(double lengthM, Expansion expansion) { }

    /**
     * What moisture does.
     *
     * @param leastM growth from dry to moist, the least of published figures
     * @param mostM and the most
     */
    public record Swelling(double leastM, double mostM) { }

    /** From 20 °C to a temperature at which all parts are. */
    public static Growth since20(List<Part> chain, Temperature temperature) {
        return of(chain, temperature.overReferenceK(), temperature.uncertaintyK());
    }

    /** From one temperature to another, as from winter to summer; both as well known as the second says. */
    public static Growth between(List<Part> chain, double fromC, Temperature to) {
        return of(chain, to.celsius() - fromC, to.uncertaintyK());
    }

    private static Growth of(List<Part> chain, double riseK, double uncertaintyK) {
        double perK = chain.stream().mapToDouble(part -> part.lengthM() * part.expansion().perK()).sum();
        double variance = Math.pow(perK * uncertaintyK, 2);
        for (Map.Entry<Expansion, Double> one : byMaterial(chain).entrySet()) {
            double doubtM = one.getValue() * one.getKey().uncertaintyPerK();
            // The last is the second-order term, all that is left at 20 °C.
            variance += Math.pow(doubtM * riseK, 2) + Math.pow(doubtM * uncertaintyK, 2);
        }
        return new Growth(perK * riseK, Math.sqrt(variance));
    }

    /** The lengths of a chain, added up by material. */
    public static Map<Expansion, Double> byMaterial(List<Part> chain) {
        return chain.stream().collect(Collectors.groupingBy(Part::expansion, Collectors.summingDouble(Part::lengthM)));
    }

    /**
     * The position to aim at today, counted from the datum, so that the work is right at 20 °C: it is warmer, and so
     * longer, while it is cut.
     *
     * @param wantedM at 20 °C
     */
    public static double aimM(double wantedM, Expansion work, Temperature temperature) {
        return wantedM * (1 + work.perK() * temperature.overReferenceK());
    }

    /** What a length is at 20 °C, from what it is at a temperature. */
    public static double at20M(double lengthM, Expansion material, Temperature temperature) {
        return lengthM / (1 + material.perK() * temperature.overReferenceK());
    }

    /**
     * What moisture does to a length, where the material takes enough to be warned of.
     *
     * @param lengthM above 0
     */
    public static Optional<Swelling> swelling(Material material, double lengthM) {
        return material.swells()
                ? Optional.of(new Swelling(material.leastSwelling() * lengthM, material.mostSwelling() * lengthM))
                : Optional.empty();
    }
}
