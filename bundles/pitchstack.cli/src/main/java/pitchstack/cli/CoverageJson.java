// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;
import pitchstack.core.coverage.CoverageSummary;
import pitchstack.core.coverage.FinestStep;
import pitchstack.core.coverage.GridCoverage;
import pitchstack.core.coverage.Reached;
import pitchstack.core.coverage.Stretch;
import pitchstack.core.units.Scale;

/**
 * A coverage for other programs. Positions and lengths are decimals in strings, as in a plan; shares are numbers from 0
 * to 1. What does not apply is null, so that every answer has the same members.
 */
final class CoverageJson {
    private final Mapped mapped;
    private final Scale scale;

    private CoverageJson(Mapped mapped) {
        this.mapped = mapped;
        this.scale = mapped.axis().scale();
    }

    /**
     * The figures, on one line.
     *
     * @param mapped what is reached
     * @param supposed what would be reached, where something is supposed
     */
    static String text(Mapped mapped, Optional<Supposed> supposed) {
        return Json.text(json -> {
            json.beginObject();
            new CoverageJson(mapped).write(json);
            json.name("supposed");
            if (supposed.isPresent()) {
                new SupposedJson(mapped, supposed.get()).write(json);
            } else {
                json.nullValue();
            }
            json.endObject();
        });
    }

    /** Writes the figures into the object that is open. */
    static void write(JsonWriter json, Mapped mapped) throws IOException {
        new CoverageJson(mapped).write(json);
    }

    private void write(JsonWriter json) throws IOException {
        CoverageSummary summary = mapped.coverage().summary();
        json.name("allReached").value(mapped.isAllReached());
        json.name("unit").value(scale.turn() == 0 ? "mm" : "deg");
        json.name("tolerance").value(scale.decimal(mapped.coverage().tolerance()));
        json.name("travel");
        writeTravel(json);
        json.name("clean").value(summary.share(Reached.CLEAN));
        json.name("wornOnly").value(summary.share(Reached.WORN));
        json.name("notReached").value(summary.share(Reached.NOT));
        json.name("gaps").value(summary.gaps());
        json.name("largestGap");
        writeRange(json, summary.largestGap());
        json.name("finestStep").value(figure(mapped.usable(), FinestStep::spacing));
        json.name("finestStepClean").value(figure(mapped.clean(), FinestStep::spacing));
        json.name("gaplessTolerance").value(figure(mapped.usable(), FinestStep::tolerance));
        json.name("gaplessToleranceClean").value(figure(mapped.clean(), FinestStep::tolerance));
        json.name("multiples");
        writeGrid(json);
        json.name("settings");
        writeCounted(json);
    }

    private void writeTravel(JsonWriter json) throws IOException {
        List<Stretch> all = mapped.coverage().stretches();
        writeRange(json, all.isEmpty() ? Optional.empty()
                : Optional.of(new Stretch(all.get(0).low(), all.get(all.size() - 1).high(), Reached.NOT)));
    }

    private void writeRange(JsonWriter json, Optional<Stretch> range) throws IOException {
        if (range.isEmpty()) {
            json.nullValue();
            return;
        }
        json.beginObject();
        json.name("from").value(scale.decimal(range.get().low()));
        json.name("to").value(scale.decimal(range.get().high()));
        json.endObject();
    }

    private String figure(Optional<FinestStep> finest, ToLongFunction<FinestStep> figure) {
        return finest.map(step -> scale.decimal(figure.applyAsLong(step))).orElse(null);
    }

    private void writeCounted(JsonWriter json) throws IOException {
        if (mapped.counted().isEmpty()) {
            json.nullValue();
            return;
        }
        Mapped.Counted counted = mapped.counted().get();
        json.beginObject();
        json.name("position").value(scale.decimal(counted.position()));
        json.name("clean").value(counted.ways().clean());
        json.name("worn").value(counted.ways().worn());
        json.endObject();
    }

    private void writeGrid(JsonWriter json) throws IOException {
        if (mapped.grid().isEmpty()) {
            json.nullValue();
            return;
        }
        GridCoverage grid = mapped.grid().get();
        json.beginObject();
        json.name("step").value(scale.decimal(grid.step()));
        json.name("count").value(grid.cells());
        json.name("clean").value(grid.count(Reached.CLEAN));
        json.name("wornOnly").value(grid.count(Reached.WORN));
        json.name("notReached").value(grid.count(Reached.NOT));
        json.name("firstMissed").beginArray();
        for (long missed : mapped.missed(CoverageText.MOST_MISSED)) {
            json.value(scale.decimal(missed));
        }
        json.endArray();
        json.endObject();
    }
}
