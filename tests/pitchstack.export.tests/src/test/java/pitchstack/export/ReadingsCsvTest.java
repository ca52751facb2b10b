// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.core.accuracy.fit.MeasuringPlan;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.EffortCost;
import pitchstack.core.stack.RowPair;
import pitchstack.core.stack.RowSpec;
import pitchstack.core.stack.Setting;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.export.ReadingList.Row;
import pitchstack.export.TargetList.BadRow;
import pitchstack.model.Approach;
import pitchstack.model.Reading;

class ReadingsCsvTest {
    private static final long ONE_MM = 1_000_000_000_000L;
    private static final AxisSpec AXIS = new AxisSpec("Slide", new LinearScale(LengthUnit.MM), List.of(stage("Rack", 5, 100, 0),
            stage("Fine, lower", 4, 40, 10)), 0, OptionalLong.empty(), OptionalLong.empty(), List.of(), 0, OptionalLong.empty());

    private static StageSpec stage(String name, long mm, int teeth, int start) {
        return new StageSpec(name, Source.BOUGHT, mm * ONE_MM, mm * ONE_MM, new RowPair(new RowSpec(teeth, List.of()),
                new RowSpec(20, List.of()), start, 10), new EffortCost(4000, 1000, 0));
    }

    private static List<BadRow> bad(String text) {
        return ReadingsCsv.read(text, AXIS).bad();
    }

    /** One table, as spreadsheets of different countries write it. */
    @ParameterizedTest
    @ValueSource(strings = {
        "Rack,\"Fine, lower\",position,direction,uncertainty,temperature\n3,-2,7.0021,up,0.001,20.5\n0,1,4 mm,down,,\n",
        "1;2;position;direction;u;temp\r\n3;-2;7,0021;up;0,001;20,5\r\n0;1;4;↓;;\r\n",
        "stage 1\tSTAGE 2\tReading (mm)\tapproach\tuncertainty (um)\ttemperature (°F)\n3\t−2\t7.0021\t+\t1\t68.9\n0\t1\t4\t−\n",
        "\uFEFFposition,rack index,2 index,side,u,temperature\n\n7.0021,3,-2,from below,1 um,20.5 °C\n4,0,1,from above,,\n"})
    void readsWhatSpreadsheetsWrite(String text) {
        ReadingList list = ReadingsCsv.read(text, AXIS);
        assertEquals(List.of(), list.bad());
        assertEquals(List.of(), list.ignored());
        Row first = list.readings().get(0);
        assertEquals(Setting.of(3, -2), first.setting());
        assertEquals(7_002_100_000_000L, AXIS.scale().parse(first.value()));
        assertEquals(Direction.FORWARD, first.direction());
        assertEquals(ONE_MM / 1000, AXIS.scale().parse(first.uncertainty()));
        assertEquals(20.5, first.temperatureC().getAsDouble(), 1e-9);
        Row second = list.readings().get(1);
        assertEquals(Direction.BACK, second.direction());
        assertEquals("", second.uncertainty());
        assertEquals(OptionalDouble.empty(), second.temperatureC());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '\0', value = {
        "x,0,5,up,,|The index of “Rack” is “x”; it must be a whole number.",
        "1.5,0,5,up,,|The index of “Rack” is “1.5”; it must be a whole number.",
        "1,,5,up,,|The index of “Fine, lower” is “”; it must be a whole number.",
        "500,0,5,up,,|The rows of “Rack” do not meet at index 500; they do from -19 to 99.",
        "1,0,five,up,,|“five” is not a length; write it like 37.625 in, 37 5/8 in, 742.3 mm or 20 µm.",
        "1,0,5 furlongs,up,,|“furlongs” is not a unit of length here; use mm, in, thou or um.",
        "1,0,\"1,234.5\",up,,|“1,234.5” has more than one comma or point; write a number without separators between thousands.",
        "1,0,5,sideways,,|The direction is “sideways”; write up (from lower positions) or down.",
        "1,0,5,up,-1,|The uncertainty “-1” must be above 0.",
        "1,0,5,up,0,|The uncertainty “0” must be above 0.",
        "1,0,5,up,,warm|The temperature is “warm”; write it like 20.5, in °C.",
        "1,0,5,up,,,7|This row has 7 cells, and there are 6 columns; put a cell with a separator in it in quotation marks,"
            + " or name every column in the header.",
        "1,0,\"5,up|A quotation mark in this row is not closed, or has text behind it."})
    void namesEveryBadRowByItsLine(String row, String sentence) {
        String text = "Rack,Stage 2,position,direction,u,temperature\n1,0,5,up,,\n" + row + "\n2,0,10,down,,\n";
        ReadingList list = ReadingsCsv.read(text, AXIS);
        assertEquals(List.of(new BadRow(3, sentence)), list.bad());
        assertEquals(2, list.readings().size());
    }

    @Test
    void saysOnceWhichColumnIsMissing() {
        assertEquals(List.of(new BadRow(1, "No column gives the index of “Fine, lower”; name one “Fine, lower” or “Stage 2”.")),
                bad("Rack,position\n1,5\n2,10\n"));
        assertEquals(List.of(new BadRow(1, "No column is called “position” or “reading”, which holds what the instrument showed.")),
                bad("1;2\n1;5\n"));
        assertEquals(List.of(new BadRow(2, "No column is called “target”, which says where the carriage was meant to stand.")),
                ReadingsCsv.readTargets("\nposition,direction\n1,up\n", AXIS).bad());
    }

    @Test
    void tellsColumnsThatItDoesNotRead() {
        assertEquals(List.of("weather"), ReadingsCsv.read("1,2,position,weather,note\n1,0,5,fine,x\n", AXIS).ignored());
    }

    @Test
    void readsTargetsInPlaceOfSettings() {
        Row row = ReadingsCsv.readTargets("target,position,direction\n15,15.0034,up\n", AXIS).readings().get(0);
        assertEquals(15 * ONE_MM, row.target());
        assertEquals(15_003_400_000_000L, AXIS.scale().parse(row.value()));
    }

    /** What a plan leaves open is filled in and read back; rows that stay open are counted. */
    @Test
    void readsAPlanThatWasFilledIn() {
        List<MeasuringPlan.Line> plan = MeasuringPlan.of(AXIS, Setting.of(0, 0), 2, 1);
        String table = MeasuringPlanCsv.of(AXIS, plan);
        assertEquals("run,Rack,\"Fine, lower\",direction,expected (mm),position (mm),temperature (°C)",
                table.lines().findFirst().orElseThrow());
        assertEquals(plan.size(), ReadingsCsv.read(table, AXIS).open());
        String filled = table.replaceFirst(",,\r\n", ",-50.001,21.5\r\n");
        ReadingList list = ReadingsCsv.read(filled, AXIS);
        assertEquals(List.of(), list.bad());
        assertEquals(List.of(), list.ignored());
        assertEquals(plan.size() - 1, list.open());
        assertEquals(plan.get(0).setting(), list.readings().get(0).setting());
        assertEquals(plan.get(0).direction(), list.readings().get(0).direction());
        Reading entry = RunEntries.of(list.readings()).get(0);
        assertEquals(plan.get(0).setting().toList(), entry.getSetting());
        assertEquals("-50.001 mm", entry.getValue());
        assertEquals(Approach.UP, entry.getApproach());
        assertEquals(21.5, entry.getTemperatureC());
    }

    @Test
    void printsAPlanToFillInByHand() {
        List<MeasuringPlan.Line> plan = MeasuringPlan.of(AXIS, Setting.of(0, 0), 3, 2);
        String page = MeasuringPlanHtml.of("A <b> & \"c\"", AXIS, plan);
        assertTrue(page.contains("<title>Measuring plan: A &lt;b&gt; &amp; &quot;c&quot;, axis “Slide”</title>"), page);
        assertEquals(plan.size(), page.split("<tr><td>", -1).length - 1);
        assertEquals(2 * plan.size(), page.split("class=\"write\"", -1).length - 1);
        assertTrue(page.contains("<th>Fine, lower</th>") && page.contains("−50.000 mm") && page.contains("↓ down"), page);
        assertTrue(!page.contains("http") && !page.contains("<script"), "nothing is fetched");
    }
}
