// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.DrawingAnswer;
import pitchstack.export.drawing.DrawingAnswer.Drawn;
import pitchstack.export.drawing.DrawingAnswer.Refused;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.FixtureDrawing;
import pitchstack.export.drawing.LiberationSans;

/** Draws the fixture on a sheet of paper. */
@Command(name = "draw", sortOptions = false, header = "Draws the fixture on one sheet, for the workshop.",
        customSynopsis = "pitchstack draw FILE --out NAME.pdf|NAME.svg|NAME.dxf [--force] [--axis NAME]%n"
                + "                       [--sheet A4|A3|A2|A1] [--scale 1:2] [--projection first|third]%n"
                + "                       [--date YYYY-MM-DD] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nThe sheet shows each axis from the side, each pair of rows and each tooth form enlarged, a table of the "
                + "stages, notes and cautions, in the unit of the file. The same file and date give the same drawing, byte "
                + "for byte.",
        footer = {"",
            "Examples:",
            "  pitchstack draw fence.pitchstack --out fence.pdf",
            "  pitchstack draw plate.pitchstack --out plate.dxf --axis Along --sheet A3 --scale 1:2",
            "",
            "Exit codes: 0 written, 2 bad input, or no room on the sheet."})
final class DrawCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private OutOptions out;

    @Mixin
    private DrawOptions options;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException {
        LoadedStack stack = file.load();
        OutFile to = out.needed(DrawingFormat.endings());
        List<AxisAnalysis> axes = options.axes(stack);
        LiberationSans letters = new LiberationSans();
        DrawingAnswer answer = FixtureDrawing.of(options.request(stack, axes), letters);
        if (answer instanceof Refused refused) {
            throw new BadInputException(refused.sentence());
        }
        Drawing drawing = ((Drawn) answer).drawing();
        byte[] bytes = DrawingFormat.of(to.ending()).bytes(drawing, letters);
        to.write(bytes);
        tell(answers.out(), drawing, to, bytes.length);
        return ExitCode.YES;
    }

    private void tell(PrintWriter writer, Drawing drawing, OutFile to, int bytes) {
        if (answers.inJson()) {
            writer.println(Json.text(json -> json.beginObject().name("written").value(to.path().toString()).name("format").value(to.ending())
                    .name("sheet").value(drawing.sheet().name()).name("date").value(drawing.date().toString())
                    .name("bytes").value(bytes).endObject()));
        } else {
            writer.println("Written: " + to.path() + ", one sheet " + drawing.sheet() + ", " + bytes + " bytes");
        }
    }
}
