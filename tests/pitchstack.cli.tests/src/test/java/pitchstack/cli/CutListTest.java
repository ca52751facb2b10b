// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import pitchstack.cli.FenceByHand.Place;
import pitchstack.cli.FenceByHand.Stop;

/** The list of 50 stops beside the examples, planned by the command and by a few lines that know nothing of the planner. */
class CutListTest {
    private static final Path HELP = Path.of("../../bundles/pitchstack.help");
    private static final Path LIST = HELP.resolve("examples/cut-list.csv");
    private static final String FENCE = HELP.resolve("examples/cross-cut-fence.pitchstack").toString();

    @Test
    void everyWayOfPlanningCostsNoMoreThanTheOneBefore() throws Exception {
        JsonNode oneByOne = planned("one-by-one");
        JsonNode given = planned("given");
        JsonNode free = planned("free");
        List<Stop> stops = FenceByHand.stops(LIST);
        assertEquals(50, stops.size());
        long onlyWorn = stops.stream().filter(stop -> FenceByHand.places(stop).stream().allMatch(Place::isWorn)).count();
        assertEquals(5, onlyWorn, "as the README says");
        for (JsonNode plan : List.of(oneByOne, given, free)) {
            assertEquals(50, plan.get("reached").intValue());
            assertEquals(0, plan.get("leftOut").intValue());
            assertEquals(onlyWorn, StreamSupport.stream(plan.get("stops").spliterator(), false)
                    .filter(leg -> leg.get("worn").size() > 0).count());
        }
        assertTrue(milliseconds(given, "effortSeconds") <= milliseconds(oneByOne, "effortSeconds"));
        assertTrue(milliseconds(free, "effortSeconds") <= milliseconds(given, "effortSeconds"));
        assertTrue(milliseconds(free, "leastSeconds") <= milliseconds(free, "effortSeconds"));
        for (JsonNode plan : List.of(given, free)) {
            assertEquals(milliseconds(oneByOne, "effortSeconds") - milliseconds(plan, "effortSeconds"),
                    milliseconds(plan, "savedSeconds"));
        }
    }

    /** What the moves cost, worked out from the settings alone; and that each setting is one for its stop. */
    @ParameterizedTest
    @ValueSource(strings = {"one-by-one", "given", "free"})
    void theEffortIsThatOfTheMoves(String order) throws Exception {
        JsonNode plan = planned(order);
        List<Stop> stops = FenceByHand.stops(LIST);
        Set<Integer> visited = new TreeSet<>();
        Place at = FenceByHand.START;
        long effort = 0;
        for (JsonNode leg : plan.get("stops")) {
            Place to = new Place(leg.get("setting").get(0).intValue(), leg.get("setting").get(1).intValue());
            int number = leg.get("stop").intValue() - 1;
            assertTrue(FenceByHand.places(stops.get(number)).contains(to), leg.toString());
            effort += FenceByHand.effortMs(at, to);
            at = to;
            visited.add(number);
        }
        assertEquals(50, visited.size());
        assertEquals(effort, milliseconds(plan, "effortSeconds"));
    }

    /** The least effort in the given order: from stop to stop, the least of every place. */
    @Test
    void nothingInTheGivenOrderCostsLess() throws Exception {
        Map<Place, Long> least = Map.of(FenceByHand.START, 0L);
        for (Stop stop : FenceByHand.stops(LIST)) {
            Map<Place, Long> next = new HashMap<>();
            for (Place to : FenceByHand.places(stop)) {
                for (Map.Entry<Place, Long> from : least.entrySet()) {
                    next.merge(to, from.getValue() + FenceByHand.effortMs(from.getKey(), to), Math::min);
                }
            }
            least = next;
        }
        long effort = least.values().stream().mapToLong(Long::longValue).min().orElseThrow();
        assertEquals(effort, milliseconds(planned("given"), "effortSeconds"));
    }

    /** One by one: of the places of a stop the one of least effort, then of least error, then below, then of lower teeth. */
    @Test
    void oneByOneTakesTheCheapestMoveEachTime() throws Exception {
        Place at = FenceByHand.START;
        long effort = 0;
        for (Stop stop : FenceByHand.stops(LIST)) {
            Place to = FenceByHand.cheapest(at, stop);
            effort += FenceByHand.effortMs(at, to);
            at = to;
        }
        assertEquals(effort, milliseconds(planned("one-by-one"), "effortSeconds"));
    }

    /** The figures in the documents are those of the command. */
    @ParameterizedTest
    @ValueSource(strings = {"../../README.md", "../../bundles/pitchstack.help/docs/command-line.md"})
    void theDocumentsShowWhatTheCommandFinds(String document) throws Exception {
        String text = Files.readString(Path.of(document));
        for (String order : List.of("one-by-one", "given", "free")) {
            List<String> totals = CommandRun.of("table", FENCE, "--targets", LIST.toString(), "--order", order).lines().stream()
                    .filter(line -> line.startsWith("Effort of all moves: ")).map(line -> line.substring(21)).toList();
            assertEquals(1, totals.size());
            assertTrue(text.contains("| `" + order + "` | " + totals.get(0) + " |"), order + ": " + totals);
        }
        String bound = CommandRun.of("table", FENCE, "--targets", LIST.toString(), "--order", "free").lines().stream()
                .filter(line -> line.startsWith("Every order costs at least ")).findFirst().orElseThrow();
        assertTrue(text.contains(bound.substring(27, bound.length() - 1)), bound);
    }

    private static JsonNode planned(String order) throws Exception {
        CommandRun run = CommandRun.of("table", FENCE, "--targets", LIST.toString(), "--order", order, "--json");
        assertEquals(0, run.code(), run.err());
        return new ObjectMapper().readTree(run.out());
    }

    private static long milliseconds(JsonNode plan, String member) {
        return plan.get(member).decimalValue().movePointRight(3).longValueExact();
    }
}
