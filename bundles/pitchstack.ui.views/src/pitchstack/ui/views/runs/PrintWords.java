// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.runs;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import pitchstack.analysis.accuracy.PrintScales;
import pitchstack.analysis.accuracy.Words;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.BedDirection;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Row;

/** What the lengths of a printed part say, in plain words. */
final class PrintWords {
    private PrintWords() {
    }

    /** The print set-ups that rows name, in the order of the file. */
    static Set<String> named(Positioner positioner) {
        Set<String> names = new LinkedHashSet<>();
        positioner.eAllContents().forEachRemaining(element -> {
            if (element instanceof Row row && row.getPrintSetup() != null && !row.getPrintSetup().isBlank()) {
                names.add(row.getPrintSetup());
            }
        });
        return names;
    }

    static String of(PrintSetup setup, Positioner positioner) {
        PrintScales scales = PrintScales.of(setup);
        List<String> lines = new ArrayList<>(scales.unreadable());
        for (BedDirection direction : BedDirection.VALUES) {
            PrintScale scale = scales.byDirection().get(direction);
            if (scale != null) {
                lines.add(direction(direction.getLiteral(), scale));
            }
        }
        if (scales.byDirection().isEmpty() && lines.isEmpty()) {
            lines.add("Add a length that was drawn and measured.");
        }
        if (!named(positioner).contains(setup.getName())) {
            lines.add("No row names “" + setup.getName() + "” as its print set-up.");
        }
        return String.join("\n\n", lines);
    }

    private static String direction(String name, PrintScale scale) {
        double within = scale.scale().within();
        double value = scale.scale().value();
        String state = scale.scale().isSignificant() ? "prints " + Percents.size(value, within)
                + (value > 0 ? " too long" : " too short") + ", ±" + Percents.within(within)
                : "may well print as drawn: " + Percents.signed(value, within) + ", ±" + Percents.within(within);
        String offset = scale.offsetM().value() == 0 ? "" : "\nEvery length is off by another "
                + TrueMinus.in(Words.size(scale.offsetM().value(), false)) + ", however long.";
        String factor = String.format(Locale.ROOT, "%.5f", scale.factor());
        return "Along " + name + " it " + state + ". " + (scale.scale().isSignificant() ? "To reprint, scale the drawing in "
                + name + " by " + factor + "." : "Its best factor, " + factor + ", changes less than is known of it: parts made here take it, and a drawing made"
                + " elsewhere can be left as it is.") + offset;
    }
}
