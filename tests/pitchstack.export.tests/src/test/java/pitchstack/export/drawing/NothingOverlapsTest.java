// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingAnswer.Refused;
import pitchstack.model.DisplayUnit;
import pitchstack.model.Positioner;

/** By geometry, not by eye: the boxes of views and texts, and the lines, of every drawing. */
class NothingOverlapsTest {
    private static final Pattern LARGE_ENOUGH = Pattern.compile("This stack does not fit on A\\d; (A\\d) is large enough\\.");

    @TempDir
    Path temporary;

    @Test
    void nothingRunsIntoAnythingOnAnySheetInEitherUnit() throws IOException {
        List<String> found = new ArrayList<>();
        for (Map.Entry<String, Positioner> device : devices().entrySet()) {
            for (DisplayUnit unit : DisplayUnit.values()) {
                for (SheetSize sheet : SheetSize.values()) {
                    DrawingAnswer answer = Devices.draw(Devices.in(unit, device.getValue()), Optional.of(sheet));
                    if (answer instanceof Drawn drawn) {
                        Overlaps.in(drawn.drawing()).forEach(one -> found.add(device.getKey() + " in " + unit + " on " + sheet
                                + ": " + one));
                    } else {
                        assertNamesASheetThatFits(device.getValue(), ((Refused) answer).sentence());
                    }
                }
            }
        }
        assertTrue(found.isEmpty(), found.size() + " overlaps:\n" + String.join("\n", found));
    }

    private static void assertNamesASheetThatFits(Positioner device, String sentence) {
        Matcher m = LARGE_ENOUGH.matcher(sentence);
        assertTrue(m.matches(), sentence);
        assertInstanceOf(Drawn.class, Devices.draw(device, Optional.of(SheetSize.valueOf(m.group(1)))));
    }

    private Map<String, Positioner> devices() throws IOException {
        Map<String, Positioner> devices = new LinkedHashMap<>();
        for (String example : Devices.EXAMPLES) {
            devices.put(example, Devices.example(example));
        }
        devices.put("small", Devices.small(temporary));
        devices.put("smallest", Devices.smallest(temporary));
        devices.put("longest", Devices.longest(temporary));
        devices.put("six", Devices.six(temporary));
        devices.put("holes", Devices.clamped(temporary, "holes"));
        devices.put("slots", Devices.clamped(temporary, "slots"));
        devices.put("wordy", Devices.wordy(temporary));
        return devices;
    }

    @Test
    void everyAxisOfTheGridPlateIsDrawnAloneToo() throws IOException {
        Positioner plate = Devices.example("grid-plate");
        for (AxisAnalysis axis : plate.getAxes().stream().map(one -> AxisAnalysis.of(plate, one)).toList()) {
            DrawingRequest request = DrawingRequest.usual(plate, List.of(axis), LocalDate.EPOCH);
            Drawing drawing = ((Drawn) FixtureDrawing.of(request, Devices.LETTERS)).drawing();
            assertEquals(List.of(), Overlaps.in(drawing));
        }
    }

    @Test
    void findsATextOnALine() {
        Part part = new Part("view", new Box(30, 30, 60, 40), List.of(
                new Mark.Text("12.5", new Point(40, 32), 2.5, Anchor.START, false),
                new Mark.Line(Pen.THIN, new Point(30, 33), new Point(60, 33))));
        Part frame = new Part("frame", new Box(0, 0, 210, 297), List.of());
        assertFalse(Overlaps.in(new Drawing(SheetSize.A4, "", "", Devices.DATE, List.of(frame, part))).isEmpty());
    }

    @Test
    void findsTwoPartsInOnePlace() {
        Part frame = new Part("frame", new Box(0, 0, 210, 297), List.of());
        Mark line = new Mark.Line(Pen.THIN, new Point(30, 30), new Point(60, 40));
        Part one = new Part("one", new Box(30, 30, 60, 40), List.of(line));
        assertFalse(Overlaps.in(new Drawing(SheetSize.A4, "", "", Devices.DATE, List.of(frame, one, one))).isEmpty());
    }
}
