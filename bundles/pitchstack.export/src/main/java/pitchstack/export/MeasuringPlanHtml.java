// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.List;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.units.TrueMinus;

/** A measuring plan to print and fill in by hand: one page style, no scripts, nothing fetched from elsewhere. */
public final class MeasuringPlanHtml {
    private static final String STYLE = "@page{size:A4;margin:15mm}body{font:10pt sans-serif;color:#000;background:#fff}"
            + "table{border-collapse:collapse;width:100%}thead{display:table-header-group}tr{page-break-inside:avoid}"
            + "td,th{border:0.3mm solid #000;padding:1.2mm 1.5mm;text-align:right}th{text-align:center}"
            + "td.write{width:28mm}p.blank span{display:inline-block;border-bottom:0.3mm solid #000;min-width:45mm}";

    private MeasuringPlanHtml() {
    }

    /**
     * The page.
     *
     * @param title of the device
     * @param axis the axis
     * @param plan the readings to take, in order
     */
    public static String of(String title, AxisSpec axis, List<MeasuringPlan.Line> plan) {
        StringBuilder html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>");
        String heading = XmlText.of("Measuring plan: " + title + ", axis “" + axis.name() + "”");
        html.append(heading).append("</title><style>").append(STYLE).append("</style></head>\n<body><h1>").append(heading)
                .append("</h1>\n<p class=\"blank\">Date <span></span> Instrument <span></span></p>\n<p class=\"blank\">"
                        + "Uncertainty of one reading (1 σ) <span></span> Temperature <span></span></p>\n")
                .append("<p>Come to every position from the side that is given: up is from lower positions. Release and seat every"
                        + " stage that moves. Let stack and instrument take the temperature of the room first. Write what the"
                        + " instrument shows; if it is far from what is expected, count the teeth again.</p>\n<table><thead><tr>"
                        + "<th>Run</th>");
        for (int j = 0; j < axis.stages().size(); j++) {
            html.append("<th>").append(XmlText.of(PlanCsv.stage(axis, j))).append("</th>");
        }
        html.append("<th>From</th><th>Expected</th><th>Read</th><th>°C</th></tr></thead><tbody>\n");
        plan.forEach(line -> add(html, axis, line));
        return html.append("</tbody></table></body></html>\n").toString();
    }

    private static void add(StringBuilder html, AxisSpec axis, MeasuringPlan.Line line) {
        html.append("<tr><td>").append(line.run()).append("</td>");
        line.setting().toList().forEach(index -> html.append("<td>").append(TrueMinus.in("" + index)).append("</td>"));
        html.append("<td>").append(line.direction() == Direction.FORWARD ? "↑ up" : "↓ down").append("</td><td>")
                .append(XmlText.of(TrueMinus.in(axis.scale().format(axis.position(line.setting())))))
                .append("</td><td class=\"write\"></td><td class=\"write\"></td></tr>\n");
    }
}
