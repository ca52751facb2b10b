// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.export.card.CardAnswer;
import pitchstack.export.card.CardFormat;
import pitchstack.export.card.CardMaker;
import pitchstack.export.card.CardRequest;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.FixtureDrawing;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** The files of the command line against those of the calls that the window's pages make with nothing changed on them. */
class SameAsWindowTest {
    private static final LocalDate DATE = LocalDate.of(2026, 2, 3);
    private static final Path EXAMPLES = Path.of("../../bundles/pitchstack.help/examples");

    @TempDir
    private Path folder;

    /** An example without the date of issue that it has, so that the date given to the command counts. */
    private Path undated(String example) throws Exception {
        Positioner positioner = StackFile.load(EXAMPLES.resolve(example + ".pitchstack")).positioner();
        assertTrue(DrawingRequest.issued(positioner).isPresent(), "the example has a date");
        String text = Files.readString(EXAMPLES.resolve(example + ".pitchstack"));
        return Files.writeString(folder.resolve(example + ".pitchstack"), text.replaceFirst(" issued=\"[^\"]*\"", ""));
    }

    @ParameterizedTest
    @ValueSource(strings = {"cross-cut-fence", "ram-shim", "slide-plate", "grid-plate", "index-table"})
    void theDrawingIsTheSameToTheByte(String example) throws Exception {
        Path file = undated(example);
        Path out = folder.resolve(example + ".svg");
        CommandRun run = CommandRun.of("draw", file.toString(), "--out", out.toString(), "--date", DATE.toString());
        assertTrue(run.err().isEmpty(), run.err());

        Positioner positioner = StackFile.load(file).positioner();
        List<AxisAnalysis> axes = positioner.getAxes().stream().map(axis -> AxisAnalysis.of(positioner, axis)).toList();
        DrawingRequest usual = DrawingRequest.usual(positioner, axes, DATE);
        LiberationSans letters = new LiberationSans();
        Drawn drawn = assertInstanceOf(Drawn.class, FixtureDrawing.of(new DrawingRequest(positioner, axes, Optional.empty(),
                Optional.empty(), usual.projection(), usual.date()), letters));
        assertArrayEquals(DrawingFormat.SVG.bytes(drawn.drawing(), letters), Files.readAllBytes(out));
    }

    @ParameterizedTest
    @EnumSource(CardFormat.class)
    void theCardIsTheSameToTheByte(CardFormat format) throws Exception {
        Path file = undated("cross-cut-fence");
        Path out = folder.resolve("fence." + format.ending());
        CommandRun.of("card", file.toString(), "--out", out.toString(), "--date", DATE.toString());
        assertArrayEquals(card(file, format, StopOrder.GIVEN), Files.readAllBytes(out));
    }

    private static byte[] card(Path file, CardFormat format, StopOrder order) throws Exception {
        Positioner positioner = StackFile.load(file).positioner();
        AxisAnalysis analysis = AxisAnalysis.of(positioner, positioner.getAxes().get(0));
        CardAnswer answer = CardMaker.make(new CardRequest(positioner, analysis, TargetStops.of(analysis).stops(), order,
                WornPolicy.AVOID, SequenceRequest.DEFAULT_MEMORY, DrawingRequest.issued(positioner).orElse(DATE)),
                analysis.planner().orElseThrow(), Progress.NONE);
        return format.bytes(assertInstanceOf(CardAnswer.Made.class, answer).card());
    }

    @Test
    void anotherOrderGivesAnotherCardInBoth() throws Exception {
        Path file = undated("cross-cut-fence");
        Path out = folder.resolve("free.html");
        CommandRun.of("card", file.toString(), "--out", out.toString(), "--date", DATE.toString(), "--order", "free");
        assertArrayEquals(card(file, CardFormat.HTML, StopOrder.FREE), Files.readAllBytes(out));
        assertFalse(Files.readString(out).equals(new String(card(file, CardFormat.HTML, StopOrder.GIVEN),
                StandardCharsets.UTF_8)), "the order changes the card");
    }
}
