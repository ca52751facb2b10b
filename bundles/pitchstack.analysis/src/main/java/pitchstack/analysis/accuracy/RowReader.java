// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import static pitchstack.analysis.accuracy.RowFacts.text;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.rack.RackTolerance;
import pitchstack.core.accuracy.total.RowAccuracy;

/**
 * Reads how well one row is made.
 *
 * @param facts the row
 */
record RowReader(RowFacts facts) {
    private static final double PPM = 1e-6;
    /** A flank anywhere within ± f of its neighbour: f/√3 for the two, f/√6 for one. */
    private static final double ONE_FLANK = Math.sqrt(6);

    /** Reads it. */
    RowAccuracy read() {
        RowLengths lengths = new RowLengths(facts);
        Optional<RackTolerance> tolerance = lengths.tolerance();
        return new RowAccuracy(lengths.read(tolerance), scatter(tolerance), neighbours(), expansion());
    }

    private double neighbours() {
        double given = facts.stage().getNeighbourCorrelation();
        if (!(given >= 0 && given <= 1)) {
            facts.notes().refuse(facts.title() + ": the correlation of neighbouring teeth is " + given + "; it must be from 0 to 1.");
            return 0;
        }
        return facts.printed() ? given : 0;
    }

    /** Its material, or what is usual for what is printed or bought. */
    Material material() {
        String own = text(facts.row().getMaterial());
        String name = own.isBlank() && facts.asStage() ? text(facts.stage().getMaterial()) : own;
        Material usual = facts.printed() ? Material.PLA : Material.STEEL;
        Optional<Material> known = Materials.named(name);
        if (known.isEmpty()) {
            facts.notes().assume(facts.title() + (name.isBlank() ? ": no material is given" : ": no usual numbers are known for “"
                    + name + "”") + "; it counts as " + usual.name() + ".");
        }
        return known.orElse(usual);
    }

    private Expansion expansion() {
        Material material = material();
        String own = text(facts.row().getMaterial());
        boolean sameMaterial = own.isBlank() ? facts.asStage() : own.equals(text(facts.stage().getMaterial()));
        double given = facts.stage().getExpansionPpmPerK() * PPM;
        double usual = material.expansion().perK();
        if (facts.rotary()) {
            return material.expansion();
        }
        if (given == 0 || !sameMaterial || Math.abs(given - usual) < PPM / 1000) {
            facts.notes().assume(Materials.sentence(material));
            return material.expansion();
        }
        double doubt = material.expansion().uncertaintyPerK() / usual;
        facts.notes().assume(String.format(Locale.ROOT, "%s: its expansion of %.1f ppm/K is taken to be known to %.0f %% (1 σ), as"
                + " usual for %s.", facts.title(), given / PPM, 100 * doubt, material.plastic() ? "plastics" : "metals"));
        return new Expansion(given, Math.abs(given) * doubt);
    }

    private double scatter(Optional<RackTolerance> tolerance) {
        OptionalDouble given = facts.notes().quantity(facts.title() + ": the scatter of teeth", facts.stage().getScatter(),
                text -> Words.along(text, facts.rotary()));
        if (given.isPresent() && facts.asStage()) {
            return given.getAsDouble();
        }
        if (tolerance.isPresent()) {
            facts.notes().assume(facts.title() + ": the scatter of single teeth follows from its grade, f/√6 = "
                    + Words.size(tolerance.get().pitchM() / ONE_FLANK, facts.rotary()) + ".");
            return tolerance.get().pitchM() / ONE_FLANK;
        }
        double usual = facts.rotary() ? facts.printed() ? Believed.PRINTED_SCATTER_RAD : Believed.BOUGHT_SCATTER_RAD
                : facts.printed() ? Believed.PRINTED_SCATTER_M : Believed.BOUGHT_SCATTER_M;
        facts.notes().assume(facts.title() + ": the file gives no scatter of single teeth for it; "
                + Words.size(usual, facts.rotary()) + " (1 σ) is taken, common practice without a source.");
        return usual;
    }
}
