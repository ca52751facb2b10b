// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import pitchstack.core.stack.Source;
import pitchstack.core.units.Pitch;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** What each stage is: its pitch and the system it is given in, teeth, material, source, and the fitted pitch correction. */
final class StageTable {
    private static final double[] WIDTHS = {9, 37, 43, 21, 27, 15, 28};
    private static final List<String> HEAD = List.of("No.", "Stage", "Pitch as given, and in ", "Teeth: base, rider",
            "Material: base, rider", "Source", "Pitch correction");

    private static final int PITCH = 2;

    private StageTable() {
    }

    /** The table of all stages of some axes. */
    static Part of(List<AxisView> axes, Style style) {
        List<List<String>> rows = new ArrayList<>();
        List<String> head = new ArrayList<>(HEAD);
        head.set(PITCH, HEAD.get(PITCH) + (axes.stream().allMatch(AxisView::isRotary) ? "degrees"
                : style.convention() == Convention.ASME ? "inches" : "mm"));
        rows.add(head);
        for (AxisView axis : axes) {
            for (StageView stage : axis.stages()) {
                rows.add(row(axis, stage, style));
            }
        }
        return Table.of("stages", WIDTHS, rows, style);
    }

    private static List<String> row(AxisView axis, StageView stage, Style style) {
        Stage facts = stage.stage();
        return List.of(stage.label(), stage.name(),
                pitch(axis, stage, style), stage.base().teeth() + ", " + stage.rider().teeth(), material(facts),
                stage.spec().source() == Source.PRINTED ? "printed" : "bought", correction(facts));
    }

    private static String pitch(AxisView axis, StageView stage, Style style) {
        String given = stage.stage().getPitch().strip();
        String number = style.number(axis, stage.spec().nominalPitch());
        String system = switch (Pitch.parse(given).system()) {
            case SPACING -> axis.isRotary() ? "angle" : "spacing";
            case CIRCULAR_PITCH -> "circular pitch";
            case MODULE -> "module";
            case DIAMETRAL_PITCH -> "diametral pitch";
            case TEETH_PER_TURN -> "teeth per turn";
        };
        return given + " (" + system + "): " + number;
    }

    private static String material(Stage stage) {
        String base = material(stage.getBaseRow(), stage);
        String rider = material(stage.getRiderRow(), stage);
        return base.equals(rider) ? base : base + ", " + rider;
    }

    private static String material(Row row, Stage stage) {
        String own = text(row.getMaterial());
        String common = text(stage.getMaterial());
        return own.isBlank() ? common.isBlank() ? "not stated" : common : own;
    }

    /** The fitted correction, with the run that it comes from. */
    private static String correction(Stage stage) {
        if (stage.getCorrectionPpm() == 0 && stage.getCorrectionRun() == null) {
            return "none fitted";
        }
        String signed = TrueMinus.in((stage.getCorrectionPpm() > 0 ? "+" : "") + plain(stage.getCorrectionPpm()));
        String ppm = signed + (stage.getCorrectionUncertaintyPpm() > 0
                ? " ± " + plain(stage.getCorrectionUncertaintyPpm()) : "") + " ppm"
                + (stage.getCorrectionUncertaintyPpm() > 0 ? " (1 σ)" : "");
        MeasurementRun run = stage.getCorrectionRun();
        return run == null ? ppm + ", date not stated"
                : ppm + ", " + (text(run.getDate()).isBlank() ? "date not stated" : run.getDate()) + ", "
                        + TrueMinus.in(plain(run.getTemperatureC())) + " °C";
    }

    /** A number to three decimals, without zeros at the end. */
    static String plain(double number) {
        return BigDecimal.valueOf(number).setScale(3, RoundingMode.HALF_EVEN).stripTrailingZeros().toPlainString();
    }

    private static String text(String text) {
        return text == null ? "" : text;
    }
}
