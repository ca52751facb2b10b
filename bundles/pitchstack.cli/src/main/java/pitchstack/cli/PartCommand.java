// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.export.part.CouponFormat;
import pitchstack.export.part.PartFile;
import pitchstack.export.part.PartFormat;

/** Writes rows of teeth as files for printers and mills. */
@Command(name = "part", sortOptions = false, header = "Writes rows of teeth as files for printers and mills.",
        customSynopsis = "pitchstack part FILE --stage NAME [--row base|rider] --out NAME.3mf|NAME.stl|NAME.dxf%n"
                + "pitchstack part FILE --set --out NAME.3mf|NAME.stl|NAME.dxf%n"
                + "pitchstack part FILE --coupon --out NAME.3mf|NAME.stl|NAME.csv%n"
                + "                [--axis NAME] [--force] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nA row lies on its side with its teeth along x, multiplied by the factors that the spans measured on "
                + "its print set-up give. A bought row comes out as its plain shape, for reference only. .3mf and .stl are "
                + "solids, .dxf is the side view with arcs; all are in millimetres.",
        footer = {"",
            "Examples:",
            "  pitchstack part fence.pitchstack --stage Rack --row rider --out adapter.3mf",
            "  pitchstack part fence.pitchstack --set --out plate.3mf",
            "  pitchstack part fence.pitchstack --coupon --out coupon.3mf",
            "",
            "Long work tells how far it is on the error stream; Ctrl+C stops it, and nothing is written.",
            "",
            "Exit codes: 0 written, 2 bad input, 130 stopped."})
final class PartCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private PartOptions parts;

    @Mixin
    private OutOptions out;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        boolean coupon = parts.isCoupon();
        OutFile to = out.needed(coupon ? CouponFormat.endings() : PartFormat.endings());
        LoadedStack stack = file.load();
        if (coupon) {
            writeCoupon(to);
        } else {
            writeRows(to, stack.title(), parts.rows(stack));
        }
        return ExitCode.YES;
    }

    private void writeRows(OutFile to, String title, List<RowReading.Ready> rows) throws BadInputException, StoppedException {
        PartFile<RowSolid> part = PartFile.of(title, rows);
        byte[] bytes = PartFile.bytes(part, PartFormat.of(to.ending()), answers.progress())
                .orElseThrow(StoppedException::new);
        to.write(bytes);
        if (answers.inJson()) {
            answers.out().println(PartJson.of(to, bytes.length, part, rows));
        } else {
            new PartText(answers.out()).write(to, bytes.length, part, rows);
        }
    }

    private void writeCoupon(OutFile to) throws BadInputException {
        byte[] bytes = CouponFormat.of(to.ending()).bytes();
        to.write(bytes);
        if (answers.inJson()) {
            answers.out().println(PartJson.ofCoupon(to, bytes.length, PartFile.coupon()));
        } else {
            new PartText(answers.out()).writeCoupon(to, bytes.length);
        }
    }
}
