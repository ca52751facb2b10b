// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.accuracy.material;

import java.util.List;

/**
 * A material with usual numbers; a measured or certified number is always better.
 *
 * <p>Expansion: steel as in JCGM 100:2008, H.1; others are middles of published tables, which state neither uncertainty nor
 * range of temperature (NIST temperature tutorial), so 10 % is taken for metals and 30 % for plastics. PETG is not
 * confirmed beyond tables for PET. Elasticity: published reviews of printed parts (PMC10113796, table 6; PMC10406103,
 * table 2) differ by ±30 % within one name, more across layers, and plastics give way further under a lasting load; metals
 * as in usual handbooks, not looked up.
 *
 * @param name for people
 * @param expansion with its uncertainty
 * @param elasticity E and ν
 * @param youngSpread half width of what E may be off by, as a part of it
 * @param plastic whether it creeps and is known badly
 * @param leastSwelling growth from dry to moist, as a part of the length, the least of published figures
 * @param mostSwelling and the most; both 0 where moisture does not count
 */
public record Material(String name, Expansion expansion, Elasticity elasticity, double youngSpread, boolean plastic,
        double leastSwelling, double mostSwelling) {
    private static final double METAL_EXPANSION_DOUBT = 0.1;
    private static final double PLASTIC_EXPANSION_DOUBT = 0.3;
    private static final double METAL_YOUNG_SPREAD = 0.05;
    private static final double PLASTIC_YOUNG_SPREAD = 0.3;
    private static final double PLASTIC_POISSON = 0.35;
    private static final double GPA = 1e9;

    /** Carbon steel. */
    public static final Material STEEL = metal("steel", 11.5e-6, 208, 0.29);
    /** Grey cast iron, whose E depends on the grade. */
    public static final Material CAST_IRON = metal("grey cast iron", 10.8e-6, 110, 0.26);
    /** Aluminium alloys. */
    public static final Material ALUMINIUM = metal("aluminium", 23.1e-6, 70, 0.33);
    /** Brass. */
    public static final Material BRASS = metal("brass", 19e-6, 103, 0.34);
    /** Polylactide, printed. */
    public static final Material PLA = plastic("PLA", 68e-6, 3.0, 0, 0);
    /** Polyethylene terephthalate glycol, printed. */
    public static final Material PETG = plastic("PETG", 60e-6, 2.0, 0, 0);
    /** Acrylonitrile butadiene styrene, printed. */
    public static final Material ABS = plastic("ABS", 90e-6, 2.0, 0, 0);
    /** Nylon, printed; swelling 0.5 to 1.5 % (Faust 2021). */
    public static final Material NYLON = plastic("nylon", 110e-6, 1.6, 0.005, 0.015);
    /** Acetal, machined. */
    public static final Material ACETAL = plastic("acetal", 110e-6, 2.8, 0, 0);

    /** All of these. */
    public static final List<Material> USUAL =
            List.of(STEEL, CAST_IRON, ALUMINIUM, BRASS, PLA, PETG, ABS, NYLON, ACETAL);

    private static Material metal(String name, double perK, double youngGpa, double poisson) {
        return new Material(name, new Expansion(perK, METAL_EXPANSION_DOUBT * perK), new Elasticity(youngGpa * GPA, poisson),
                METAL_YOUNG_SPREAD, false, 0, 0);
    }

    private static Material plastic(String name, double perK, double youngGpa, double leastSwelling, double mostSwelling) {
        return new Material(name, new Expansion(perK, PLASTIC_EXPANSION_DOUBT * perK),
                new Elasticity(youngGpa * GPA, PLASTIC_POISSON), PLASTIC_YOUNG_SPREAD, true, leastSwelling, mostSwelling);
    }

    /** Whether moisture makes it grow enough to be warned of. */
    public boolean swells() {
        return mostSwelling > 0;
    }
}
