// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Named;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.core.plan.StopOrder;
import pitchstack.core.plan.WornPolicy;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;

/** Cards of the shipped examples and of stacks made up for a test. */
final class Cards {
    static final LocalDate DATE = LocalDate.of(2026, 2, 3);
    private static final Path EXAMPLES = Path.of("../../bundles/pitchstack.help/examples");

    private Cards() {
    }

    /** A card of every axis of every example that has targets. */
    static List<Named<SettingCard>> ofAllExamples() {
        try (Stream<Path> files = Files.list(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".pitchstack")).sorted().flatMap(Cards::ofAll)
                    .map(card -> Named.of(card.head().title() + ", " + card.axis().name(), card)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A card of the first axis of an example. */
    static SettingCard ofExample(String name) throws IOException {
        return ofAll(EXAMPLES.resolve(name + ".pitchstack")).findFirst().orElseThrow();
    }

    private static Stream<SettingCard> ofAll(Path file) {
        try {
            Positioner positioner = StackFile.load(file).positioner();
            return positioner.getAxes().stream().filter(axis -> !axis.getTargets().isEmpty())
                    .map(axis -> of(positioner, axis, StopOrder.GIVEN));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The card of an axis. */
    static SettingCard of(Positioner positioner, Axis axis, StopOrder order) {
        AxisAnalysis analysis = AxisAnalysis.of(positioner, axis);
        CardRequest request = new CardRequest(positioner, analysis, TargetStops.of(analysis).stops(), order, WornPolicy.AVOID,
                SequenceRequest.DEFAULT_MEMORY, DATE);
        return ((CardAnswer.Made) CardMaker.make(request, analysis.planner().orElseThrow(), Progress.NONE)).card();
    }

    /** A stack written out as a file says it. */
    static Positioner read(Path folder, String text) throws IOException {
        return StackFile.load(Files.writeString(folder.resolve("made-up.pitchstack"), text)).positioner();
    }
}
