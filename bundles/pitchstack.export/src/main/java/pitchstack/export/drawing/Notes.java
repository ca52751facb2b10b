// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.TitleBlock;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** What the drawing says in words: units, temperature, how to measure, print and clamp, marked teeth, and the cautions. */
final class Notes {
    private static final double NUMBER = 6;
    private static final List<String> CAUTIONS = List.of(
            "A printed stage is a positioning aid: never a guard, and never in the load path. A metal stop or clamp takes the "
                    + "cutting and pressing forces.",
            "Isolate and lock out the machine before you reach in or move a stage.",
            "The machine maker's manual, local codes and licensed practice come first; the risk assessment is yours.");

    private final Positioner positioner;
    private final List<AxisView> axes;
    private final Style style;

    private Notes(Positioner positioner, List<AxisView> axes, Style style) {
        this.positioner = positioner;
        this.axes = axes;
        this.style = style;
    }

    /** The numbered notes. */
    static Part notes(Positioner positioner, List<AxisView> axes, double widthMm, Style style) {
        return part("notes", "Notes", new Notes(positioner, axes, style).sentences(), widthMm, style);
    }

    /** The cautions. */
    static Part cautions(double widthMm, Style style) {
        return part("cautions", "Cautions", CAUTIONS, widthMm, style);
    }

    private static Part part(String name, String heading, List<String> sentences, double widthMm, Style style) {
        Pencil pencil = style.pencil();
        pencil.text(heading, 0, 0, Pencil.HEADING, Anchor.START);
        double y = -Pencil.HEADING - Pencil.TEXT;
        for (int i = 0; i < sentences.size(); i++) {
            pencil.text(i + 1 + ".", 0, y, Pencil.TEXT, Anchor.START);
            for (String line : TextLines.wrapped(sentences.get(i), Pencil.TEXT, widthMm - NUMBER, style.measure())) {
                pencil.text(line, NUMBER, y, Pencil.TEXT, Anchor.START);
                y -= Pencil.TEXT * Pencil.LINE_PITCH;
            }
            y -= Pencil.TEXT * 0.3;
        }
        return pencil.part(name);
    }

    private List<String> sentences() {
        List<String> sentences = new ArrayList<>();
        sentences.add((axes.stream().allMatch(AxisView::isRotary) ? "Angles in degrees, minutes and seconds."
                : style.convention().unitNote()) + " All sizes hold at 20 °C (ISO 1), without pitch corrections.");
        sentences.add(drawnAt());
        sentences.add("Measure each pitch over as many teeth as its detail shows, between flanks of the same hand.");
        tolerances(sentences);
        unstated(sentences);
        clamping(sentences);
        printing(sentences);
        preload(sentences);
        marked(sentences);
        TitleBlock block = positioner.getTitleBlock();
        if (block != null && block.getNotes() != null && !block.getNotes().isBlank()) {
            sentences.add(block.getNotes());
        }
        return sentences;
    }

    private String drawnAt() {
        boolean zero = axes.stream().flatMap(axis -> axis.stages().stream()).allMatch(stage -> stage.index() == 0);
        String drawn = zero ? "Every stage is drawn at index 0." : "Drawn at index 0 of each stage, or the index nearest to it: "
                + axes.stream().map(axis -> axis.stages().stream()
                        .map(stage -> TrueMinus.in(String.valueOf(stage.index()))).collect(Collectors.joining(", ")))
                        .collect(Collectors.joining("; ")) + ".";
        return drawn + " The reference of a carriage is the middle of its rider row; the file does not say where rows lie on a "
                + "body, so each stage stands centred on the one below.";
    }

    /** Where tolerances come from; ISO 2768-1 (from memory) is for sizes that carry none of their own. */
    private void tolerances(List<String> sentences) {
        sentences.add("Sizes without a tolerance: ISO 2768-1, medium; this drawing proposes that class, the file names none. It "
                + "does not hold for teeth: there the pitch over many counts, not the single one.");
        List<String> given = axes.stream().filter(axis -> axis.stages().stream().anyMatch(stage ->
                PitchTolerance.of(axis, stage, PairDetail.measuredTeeth(stage), style).isPresent()))
                .map(axis -> "“" + style.measure().printable(axis.name()) + "” ±" + style.number(axis, axis.spec().tolerance()))
                .toList();
        if (!given.isEmpty()) {
            sentences.add("± on pitches follows from the tolerance of targets in the file (" + String.join(", ", given)
                    + "), which the stages of an axis share equally, each over the teeth that it can move by. Measure a row that "
                    + "is off by more, and enter its pitch as a correction.");
        }
        grades(sentences);
    }

    private void grades(List<String> sentences) {
        List<String> grades = new ArrayList<>();
        forRows((label, row) -> {
            if (row.getGrade() != null && !row.getGrade().isBlank()) {
                grades.add(label + " " + row.getGrade().strip());
            }
        });
        if (!grades.isEmpty()) {
            sentences.add("Grades of rows as the file names them: " + String.join("; ", grades) + ".");
        }
    }

    private void unstated(List<String> sentences) {
        if (axes.stream().anyMatch(axis -> !axis.isRotary() && !axis.isThicknessStated())) {
            sentences.add("Bodies whose thickness the file does not give are drawn as their parts are made, 8 modules thick.");
        }
        if (axes.stream().anyMatch(AxisView::isRotary)) {
            sentences.add("Rotary axes are drawn unrolled: lengths along them are degrees of turn, not lengths on the part. "
                    + "The file gives no radius, so heights and tooth depths are drawn for show.");
        }
    }

    /** The holes of rows, alike ones together. */
    private void clamping(List<String> sentences) {
        Map<String, List<String>> holes = new LinkedHashMap<>();
        forStages((number, stage) -> {
            forHoles(stage.base(), size -> holes.computeIfAbsent(size, rows -> new ArrayList<>()).add(number + " base"));
            forHoles(stage.rider(), size -> holes.computeIfAbsent(size, rows -> new ArrayList<>()).add(number + " rider"));
        });
        if (!holes.isEmpty()) {
            sentences.add("Clamping, through the face and evenly about the middle of the row: " + holes.entrySet().stream()
                    .map(row -> String.join(", ", row.getValue()) + ": " + row.getKey()).collect(Collectors.joining("; ")) + ".");
        }
    }

    private void forHoles(RowView row, Consumer<String> visit) {
        RowHoles holes = row.holes();
        int count = holes.fromLeft().size();
        if (count > 0) {
            String size = holes.isSlots() ? count + (count == 1 ? " slot " : " slots ") + mm(holes.clamping().diameterMm())
                    + " × " + mm(holes.clamping().lengthMm())
                    : count + (count == 1 ? " hole Ø" : " holes Ø") + mm(holes.clamping().diameterMm());
            visit.accept(size + (count == 1 ? "" : ", " + mm(holes.clamping().spacingMm()) + " apart") + ", middle "
                    + mm(holes.fromBack()) + " from the back");
        }
    }

    private String mm(double mm) {
        return style.convention().rounded(mm, 3);
    }

    /** Rows by set-up, in the order of the stack. */
    private void printing(List<String> sentences) {
        Map<String, List<String>> setups = new LinkedHashMap<>();
        forRows((label, row) -> {
            if (row.getPrintSetup() != null && !row.getPrintSetup().isBlank()) {
                setups.computeIfAbsent(row.getPrintSetup().strip(), setup -> new ArrayList<>()).add(label);
            }
        });
        if (!setups.isEmpty()) {
            sentences.add("Print what mates in one set-up, teeth in the plane of the bed and all rows in the same direction. "
                    + "Set-ups: "
                    + setups.entrySet().stream().map(setup -> "“" + setup.getKey() + "”: "
                            + String.join(", ", setup.getValue())).collect(Collectors.joining("; ")) + ".");
        }
    }

    private void preload(List<String> sentences) {
        List<String> stated = new ArrayList<>();
        forStages((number, stage) -> {
            if (stage.stage().getPreloadN() > 0) {
                stated.add(number + ": " + StageTable.plain(stage.stage().getPreloadN()) + " N");
            }
        });
        sentences.add(stated.isEmpty() ? "Preload: not stated. Seat each stage with the same force every time."
                : "Preload by stage: " + String.join("; ", stated) + ".");
    }

    private void marked(List<String> sentences) {
        List<String> marked = new ArrayList<>();
        forRows((label, row) -> row.getWorn().forEach(range -> marked.add(label + " " + teeth(range))));
        if (!marked.isEmpty()) {
            sentences.add("Marked teeth, counted from 0: " + String.join("; ", marked) + ".");
        }
    }

    private static String teeth(WornRange range) {
        return (range.getFirst() == range.getLast() ? "tooth " + range.getFirst()
                : "teeth " + range.getFirst() + " to " + range.getLast())
                + (range.getKind() == WearKind.BARRED ? " barred" : " worn");
    }

    private interface StageVisit {
        void visit(String number, StageView stage);
    }

    private interface RowVisit {
        void visit(String label, Row row);
    }

    private void forStages(StageVisit visit) {
        for (AxisView axis : axes) {
            for (StageView stage : axis.stages()) {
                visit.visit(stage.label(), stage);
            }
        }
    }

    private void forRows(RowVisit visit) {
        forStages((number, stage) -> {
            Stage facts = stage.stage();
            visit.visit(number + " base", facts.getBaseRow());
            visit.visit(number + " rider", facts.getRiderRow());
        });
    }
}
