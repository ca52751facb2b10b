// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import pitchstack.core.coverage.Coverage;
import pitchstack.core.coverage.Reach;
import pitchstack.core.plan.PlanRequest;
import pitchstack.core.plan.Planner;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.WornPolicy;
import pitchstack.core.stack.AxisSpec;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** One stack written down in inches and in millimetres, in two files; an inch is 25.4 mm exactly. */
class SpellingsTest {
    private static final String FILE = """
            <?xml version="1.0" encoding="UTF-8"?>
            <ps:Positioner xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:ps="pitchstack:model/1"
                unit="%s" temperatureC="26.5">
              <axes name="Fence" datum="%s" low="%s" high="%s" tolerance="%s">
                <stages name="Rack" pitch="%s" expansionPpmPerK="11.5" correctionPpm="37.5" minimumEngaged="8">
                  <baseRow teeth="160"><worn first="40" last="44"/><worn first="90" last="91" kind="barred"/></baseRow>
                  <riderRow teeth="16"/>
                  <indexErrors index="3" error="%s"/>
                  <indexErrors index="70" error="%s"/>
                </stages>
                <stages name="Carriage" source="printed" pitch="%s" expansionPpmPerK="68" start="20" minimumEngaged="12">
                  <baseRow teeth="60"/>
                  <riderRow teeth="20"/>
                </stages>
                <shiftLimits lowest="2" highest="2" limit="%s"/>
              </axes>
            </ps:Positioner>
            """;
    @TempDir
    private Path folder;

    private AxisAnalysis inches() throws Exception {
        return read("in", "1/2", "0.5", "24", "0.003", "1/4 in CP", "0.002", "-1/1000", "0.24", "3.6");
    }

    private AxisAnalysis millimetres() throws Exception {
        return read("mm", "12.7", "12.7", "609.6", "0.0762", "6.35", "0.0508", "-25.4 um", "6.096", "91.44");
    }

    private AxisAnalysis read(Object... texts) throws Exception {
        Path file = folder.resolve(texts[0] + ".pitchstack");
        Files.writeString(file, FILE.formatted(texts));
        Positioner positioner = StackFile.load(file).positioner();
        StackFile.save(positioner, file);
        Positioner again = StackFile.load(file).positioner();
        return AxisAnalysis.of(again, again.getAxes().get(0));
    }

    @Test
    void readsTheSameNumbersToTheFemtometre() throws Exception {
        AxisSpec one = inches().spec();
        AxisSpec other = millimetres().spec();
        assertEquals(one, new AxisSpec(other.name(), one.scale(), other.stages(), other.datum(), other.low(),
                other.high(), other.shiftLimits(), other.approach(), other.tolerance(), other.wantedStep()));
        // −0.001 in at 26.5 °C: 25.4 µm · (1 + 11.5·10⁻⁶ · 6.5) = 25.4018986500 µm.
        assertEquals(-25_401_898_650L, one.stages().get(0).errors().at(70));
    }

    @Test
    void plansAndCoversAlike() throws Exception {
        AxisAnalysis one = inches();
        AxisAnalysis other = millimetres();
        Planner inInches = one.planner().orElseThrow();
        Planner inMillimetres = other.planner().orElseThrow();
        for (int eighth = 4; eighth < 192; eighth += 3) {
            long target = one.spec().scale().parse(eighth / 8 + " " + eighth % 8 + "/8");
            assertEquals(target, other.spec().scale().parse(eighth * 3175 + "/1000"));
            PlanRequest request = new PlanRequest(target, one.spec().tolerance(), one.current(), WornPolicy.AVOID, 3);
            assertEquals(inInches.plan(request), inMillimetres.plan(request));
        }
        assertEquals(coverage(one).stretches(), coverage(other).stretches());
        assertEquals(coverage(one).summary(), coverage(other).summary());
    }

    private static Coverage coverage(AxisAnalysis analysis) {
        return Reach.of(analysis.spec(), Progress.NONE).get().coverage(analysis.spec().tolerance(), Progress.NONE).get();
    }
}
