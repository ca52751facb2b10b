// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** Devices to draw: the examples, and made-up ones at the limits of what there can be. */
final class Devices {
    static final LiberationSans LETTERS = new LiberationSans();
    static final List<String> EXAMPLES = List.of("cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table");
    static final LocalDate DATE = LocalDate.of(2026, 1, 15);
    private static final String LONG = "A name that nobody would wish for in a workshop, since it goes on and on, "
            + "with_a_word_in_it_that_has_no_blank_to_break_it_at_and_is_wider_than_any_column_of_any_table_on_the_sheet";

    private Devices() {
    }

    static Path folder() {
        return Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("../..").normalize()
                .resolve("bundles/pitchstack.help/examples");
    }

    static Positioner example(String name) throws IOException {
        return StackFile.load(folder().resolve(name + "." + StackFile.EXTENSION)).positioner();
    }

    /** A device of one axis. */
    static Positioner device(Path temporary, String attributes, String titleBlock, String... stages) throws IOException {
        return read(temporary, "<ps:Positioner xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\" "
                + "xmlns:ps=\"pitchstack:model/1\" " + attributes + ">" + titleBlock + "<axes name=\"Slide\">"
                + String.join("", stages) + "</axes></ps:Positioner>");
    }

    private static Positioner read(Path temporary, String text) throws IOException {
        Path file = Files.createTempFile(temporary, "device", "." + StackFile.EXTENSION);
        return StackFile.load(Files.writeString(file, "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + text)).positioner();
    }

    static String stage(String name, String pitch, int base, int rider) {
        return "<stages name=\"" + name + "\" pitch=\"" + pitch + "\" source=\"printed\" material=\"PLA\"><baseRow teeth=\"" + base
                + "\" printSetup=\"bed\"/><riderRow teeth=\"" + rider + "\" printSetup=\"bed\"/></stages>";
    }

    /** One stage, and nothing filled in that need not be. */
    static Positioner small(Path temporary) throws IOException {
        return device(temporary, "", "", stage("", "5 mm", 20, 12));
    }

    /** A single tooth on a single tooth. */
    static Positioner smallest(Path temporary) throws IOException {
        return device(temporary, "title=\"Lock\"", "<titleBlock/>", stage("Lock", "6 mm", 1, 1));
    }

    /** A rack of 20 000 teeth. */
    static Positioner longest(Path temporary) throws IOException {
        return device(temporary, "title=\"Long rack\"", "<titleBlock/>", stage("Rack", "module 1", 20_000, 30),
                stage("Fine", "3.1 mm", 40, 30));
    }

    /** Six stages of all systems of pitch. */
    static Positioner six(Path temporary) throws IOException {
        return device(temporary, "title=\"Six stages\"", "<titleBlock owner=\"Example workshop\" number=\"PS-6\"/>",
                stage("Rack", "1/4 in CP", 400, 24), stage("Module", "module 1.25", 40, 30), stage("Inch", "24 DP", 40, 30),
                stage("Tenths", "4.9 mm", 32, 24), stage("Hundredths", "3.99 mm", 18, 16), stage("Last", "0.1 in CP", 60, 50));
    }

    /** Both rows clamped, the upper one as said. */
    static Positioner clamped(Path temporary, String clamping) throws IOException {
        String rows = stage("Rack", "5 mm", 60, 24).replace("<baseRow ", "<baseRow faceWidth=\"20 mm\" clamping=\"holes\" ")
                .replace("<riderRow ", "<riderRow faceWidth=\"15 mm\" bodyThickness=\"14 mm\" clamping=\"" + clamping
                        + "\" clampDiameter=\"6 mm\" clampSpacing=\"50 mm\" ");
        return device(temporary, "title=\"Clamped\"", "<titleBlock/>", rows);
    }

    /** Names and notes as long as anybody may type them. */
    static Positioner wordy(Path temporary) throws IOException {
        return device(temporary, "title=\"" + LONG + "\"", "<titleBlock owner=\"" + LONG + "\" number=\"" + LONG
                + "\" creator=\"" + LONG + "\" approver=\"" + LONG + "\" issued=\"" + LONG + "\" revision=\"" + LONG
                + "\" notes=\"" + LONG + "\"/>", stage(LONG, "5 mm", 40, 24), stage(LONG, "4.9 mm", 40, 24));
    }

    static DrawingRequest request(Positioner device, Optional<SheetSize> sheet) {
        List<AxisAnalysis> axes = device.getAxes().stream().map(axis -> AxisAnalysis.of(device, axis)).toList();
        DrawingRequest usual = DrawingRequest.usual(device, axes, DATE);
        return new DrawingRequest(device, axes, sheet, Optional.empty(), usual.projection(), usual.date());
    }

    static DrawingAnswer draw(Positioner device, Optional<SheetSize> sheet) {
        return FixtureDrawing.of(request(device, sheet), LETTERS);
    }

    /** On the smallest sheet that is large enough. */
    static Drawing drawn(Positioner device) {
        return ((Drawn) draw(device, Optional.empty())).drawing();
    }

    static Positioner in(DisplayUnit unit, Positioner device) {
        device.setUnit(unit);
        return device;
    }

    static List<String> texts(Drawing drawing) {
        return drawing.marks().stream().filter(Mark.Text.class::isInstance).map(mark -> ((Mark.Text) mark).text()).toList();
    }
}
