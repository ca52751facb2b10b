// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import pitchstack.core.accuracy.fit.PrintScale;
import pitchstack.core.accuracy.fit.SpanReading;
import pitchstack.model.BedDirection;
import pitchstack.model.PrintSetup;
import pitchstack.model.Span;

/**
 * The scale of a print set-up, from spans measured on a part of it.
 *
 * @param byDirection along x and y of the bed, where spans were measured
 * @param unreadable one sentence for each span that cannot be used
 */
public record PrintScales(Map<BedDirection, PrintScale> byDirection, List<String> unreadable) {
    /** What the span of a calliper is taken to be known to where the set-up does not say. */
    private static final double CALLIPER_M = 20e-6;

    /** Copies the map and the list. */
    public PrintScales {
        byDirection = Map.copyOf(byDirection);
        unreadable = List.copyOf(unreadable);
    }

    /** Evaluates a set-up. */
    public static PrintScales of(PrintSetup setup) {
        Notes notes = new Notes();
        String title = "Print set-up “" + setup.getName() + "”";
        double uncertaintyM = notes.quantity(title + ": the uncertainty", setup.getUncertainty(), Si::lengthM).orElse(0);
        Map<BedDirection, List<SpanReading>> spans = new EnumMap<>(BedDirection.class);
        for (Span span : setup.getSpans()) {
            OptionalDouble drawn = notes.quantity(title + ": a drawn span", span.getDrawn(), Si::lengthM);
            OptionalDouble measured = notes.quantity(title + ": a measured span", span.getMeasured(), Si::lengthM);
            if (drawn.orElse(0) > 0 && measured.orElse(0) > 0) {
                spans.computeIfAbsent(span.getDirection(), direction -> new ArrayList<>()).add(new SpanReading(
                        drawn.getAsDouble(), measured.getAsDouble(), uncertaintyM > 0 ? uncertaintyM : CALLIPER_M));
            } else {
                notes.refuse(title + ": a span needs a drawn and a measured length above 0, not “" + span.getDrawn()
                        + "” and “" + span.getMeasured() + "”.");
            }
        }
        Map<BedDirection, PrintScale> scales = new EnumMap<>(BedDirection.class);
        spans.forEach((direction, readings) -> scales.put(direction, PrintScale.of(readings)));
        return new PrintScales(scales, notes.unreadable());
    }
}
