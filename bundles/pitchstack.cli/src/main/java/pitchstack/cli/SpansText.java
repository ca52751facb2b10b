// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import pitchstack.analysis.accuracy.PrintScales;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.BedDirection;
import pitchstack.model.PrintSetup;

/** The scale of every print set-up, for a person or for other programs. */
final class SpansText {
    private static final double PPM = 1e-6;

    private final PrintWriter out;
    private final boolean json;

    SpansText(PrintWriter out, boolean json) {
        this.out = out;
        this.json = json;
    }

    /**
     * Writes it.
     *
     * @throws BadInputException if the file has no span, or one that cannot be read
     */
    void write(LoadedStack stack) throws BadInputException {
        Map<PrintSetup, PrintScales> all = new LinkedHashMap<>();
        for (PrintSetup setup : stack.positioner().getPrintSetups()) {
            PrintScales scales = PrintScales.of(setup);
            if (!scales.unreadable().isEmpty()) {
                throw new BadInputException(String.join(" ", scales.unreadable()));
            }
            all.put(setup, scales);
        }
        if (all.values().stream().allMatch(scales -> scales.byDirection().isEmpty())) {
            throw new BadInputException("“" + stack.title() + "” has no print set-up with a measured span; measure one, from a"
                    + " flank to another of the same hand, and enter it in the file.");
        }
        if (json) {
            out.println(text(all));
        } else {
            table(all, stack.title());
        }
    }

    private void table(Map<PrintSetup, PrintScales> all, String title) {
        out.println(title + ": scale of every print set-up, from the spans measured on it");
        out.println();
        TextTable table = new TextTable("Set-up", "along", "too long by", "95 %", "offset", "draw by the factor");
        all.forEach((setup, scales) -> new TreeMap<>(scales.byDirection()).forEach((direction, scale) -> table.add(
                setup.getName(), direction.getLiteral(), ppm("%+.0f ppm", scale.scale().value()),
                "± " + ppm("%.0f ppm", scale.scale().within()),
                TrueMinus.in(String.format(Locale.ROOT, "%+.3f mm", scale.offsetM().value() * 1e3)),
                String.format(Locale.ROOT, "%.5f", scale.factor()))));
        table.write(out);
        out.println();
        out.println("A factor matters where “too long by” is larger than its 95 %. Let parts cool for a day before measuring.");
    }

    private static String ppm(String format, double relative) {
        return TrueMinus.in(String.format(Locale.ROOT, format, relative / PPM).replaceFirst("^[-+]0 ", "0 "));
    }

    private static String text(Map<PrintSetup, PrintScales> all) {
        return Json.text(writer -> {
            writer.beginObject().name("printSetups").beginArray();
            for (Map.Entry<PrintSetup, PrintScales> one : all.entrySet()) {
                for (Map.Entry<BedDirection, PrintScale> scale : new TreeMap<>(one.getValue().byDirection()).entrySet()) {
                    writer.beginObject().name("name").value(one.getKey().getName());
                    writer.name("direction").value(scale.getKey().getLiteral());
                    MicroJson.plain(writer, "scalePpm", scale.getValue().scale().value() / PPM);
                    MicroJson.plain(writer, "uncertaintyPpm", scale.getValue().scale().uncertainty() / PPM);
                    MicroJson.plain(writer, "offsetUm", scale.getValue().offsetM().value() / PPM);
                    MicroJson.plain(writer, "factor", scale.getValue().factor());
                    writer.endObject();
                }
            }
            writer.endArray().endObject();
        });
    }
}
