// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.Reach;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.AxisSpec;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/**
 * A stack small enough to be worked out by hand: 5 a + 4.9 b mm with a in {0, 1} and b in {−1, 0, 1}, so the positions
 * −4.9, 0, 0.1, 4.9, 5 and 9.9 mm. Base tooth 1 of the rack is worn, so that a = 1, and with it 0.1, 5 and 9.9 mm, stands
 * on worn teeth.
 */
final class SmallStack {
    private static final String TEXT = """
            <?xml version="1.0" encoding="UTF-8"?>
            <ps:Positioner xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:ps="pitchstack:model/1" unit="mm">
            <axes name="Slide" kind="linear" tolerance="0">
            <stages name="Rack" pitch="5 mm" start="0" minimumEngaged="1">
            <baseRow teeth="2"><worn first="1" last="1"/></baseRow><riderRow teeth="1"/></stages>
            <stages name="Fine" pitch="4.9 mm" start="1" minimumEngaged="1">
            <baseRow teeth="3"/><riderRow teeth="1"/></stages>
            </axes>
            </ps:Positioner>
            """;

    private SmallStack() {
    }

    /** The axis, shown in mm or in. */
    static AxisSpec axis(Path folder, String unit) throws IOException {
        return read(folder, TEXT.replace("unit=\"mm\"", "unit=\"" + unit + '"'));
    }

    /** A single stage with one engaged tooth: positions a pitch apart, from 0 on. */
    static AxisSpec rack(Path folder, String pitch, int teeth) throws IOException {
        int second = TEXT.indexOf("<stages name=\"Fine\"");
        return read(folder, (TEXT.substring(0, second) + "</axes></ps:Positioner>").replace("5 mm", pitch)
                .replaceAll("<baseRow.*?</baseRow>", "<baseRow teeth=\"" + teeth + "\"/>"));
    }

    private static AxisSpec read(Path folder, String text) throws IOException {
        Path file = Files.writeString(folder.resolve("small.pitchstack"), text);
        Positioner positioner = StackFile.load(file).positioner();
        return AxisAnalysis.of(positioner, positioner.getAxes().get(0)).spec();
    }

    static Coverage coverage(AxisSpec axis, String tolerance) {
        return Reach.of(axis, Progress.NONE).get().coverage(axis.scale().parse(tolerance), Progress.NONE).get();
    }
}
