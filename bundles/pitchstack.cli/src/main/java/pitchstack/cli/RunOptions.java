// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.ReadingList;
import pitchstack.export.ReadingsCsv;
import pitchstack.export.RunEntries;
import pitchstack.export.TargetList.BadRow;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;

/** Which run of readings a command is about: a table, or a run in the stack file. */
final class RunOptions {
    private static final int MOST_BAD_ROWS = 5;

    @Option(names = "--readings", paramLabel = "RUN.csv", description = "The readings: a column for the index of each stage, and"
            + " position, direction (up or down), uncertainty, temperature.")
    private String readings;

    @Option(names = "--run", paramLabel = "ID", description = "A run that is in the stack file, instead of --readings.")
    private String id;

    @Option(names = "--uncertainty", paramLabel = "U",
            description = "Standard uncertainty of one of the readings in RUN.csv that states none.")
    private String uncertainty;

    @Option(names = "--instrument-scale", paramLabel = "PPM",
            description = "Standard uncertainty of the scale of the instrument of RUN.csv, in ppm.")
    private String instrumentScale;

    @Option(names = "--run-temperature", paramLabel = "T",
            description = "Temperature at the readings in RUN.csv that state none. Default: that of the file.")
    private String temperature;

    /** The table of readings as typed, or null. */
    String readings() {
        return readings;
    }

    /** Whether readings are named at all. */
    boolean isGiven() {
        return readings != null || id != null;
    }

    /**
     * The run, in its axis: one that the file has, or one made of the table and put there, in what was read only.
     *
     * @throws BadInputException if there is none, or not exactly one, or a row cannot be read
     */
    MeasurementRun run(Positioner positioner, AxisAnalysis analysis) throws BadInputException {
        if ((readings == null) == (id == null)) {
            throw new BadInputException(readings == null ? "Readings are missing; write --readings with a .csv file, or --run with"
                    + " one of the file: " + ids(analysis) + "." : "--readings and --run cannot both be given.");
        }
        if (id != null) {
            return analysis.axis().getRuns().stream().filter(run -> id.equals(run.getId())).findFirst()
                    .orElseThrow(() -> new BadInputException("--run: axis “" + analysis.spec().name() + "” has no run “" + id
                            + "”; it has " + ids(analysis) + "."));
        }
        MeasurementRun run = fromTable(positioner, analysis);
        analysis.axis().getRuns().add(run);
        return run;
    }

    private static String ids(AxisAnalysis analysis) {
        return analysis.axis().getRuns().isEmpty() ? "none"
                : analysis.axis().getRuns().stream().map(run -> "“" + run.getId() + "”").collect(Collectors.joining(", "));
    }

    private MeasurementRun fromTable(Positioner positioner, AxisAnalysis analysis) throws BadInputException {
        ReadingList list = ReadingsCsv.read(TextFile.read("--readings", readings), analysis.spec());
        requireSound(list, "--readings", readings);
        MeasurementRun run = PitchstackFactory.eINSTANCE.createMeasurementRun();
        run.setId(freeId(positioner));
        run.getReadings().addAll(RunEntries.of(list.readings()));
        run.setTemperatureC(temperature == null ? positioner.getTemperatureC()
                : TypedTemperature.celsius("--run-temperature", temperature));
        run.setInstrumentScalePpm(instrumentScale == null ? 0 : ppm(instrumentScale));
        if (uncertainty != null) {
            if (TypedLength.read(analysis.spec().scale(), "--uncertainty", uncertainty) <= 0) {
                throw new BadInputException("--uncertainty: “" + uncertainty + "” must be above 0.");
            }
            run.setUncertainty(uncertainty);
        }
        return run;
    }

    /**
     * Refuses a table with a row that cannot be read, or without a reading.
     *
     * @throws BadInputException naming the rows by their lines
     */
    static void requireSound(ReadingList list, String option, String file) throws BadInputException {
        List<BadRow> bad = list.bad();
        if (!bad.isEmpty()) {
            String rows = bad.stream().limit(MOST_BAD_ROWS).map(row -> "Line " + row.line() + ": " + row.sentence())
                    .collect(Collectors.joining(" "));
            throw new BadInputException(option + ": “" + file + "” cannot be used. " + rows
                    + (bad.size() > MOST_BAD_ROWS ? " And " + (bad.size() - MOST_BAD_ROWS) + " more rows like this." : ""));
        }
        if (list.readings().isEmpty()) {
            throw new BadInputException(option + ": “" + file + "” has no readings"
                    + (list.open() > 0 ? "; " + list.open() + " rows are still to be filled in." : "."));
        }
    }

    /** The name of the table, with a number where the file has a run of that name. */
    private String freeId(Positioner positioner) {
        String stem = Path.of(readings).getFileName().toString().replaceFirst("\\.[^.]*$", "");
        List<String> taken = positioner.getAxes().stream().flatMap(axis -> axis.getRuns().stream()).map(MeasurementRun::getId)
                .toList();
        String free = stem;
        for (int number = 2; taken.contains(free); number++) {
            free = stem + " " + number;
        }
        return free;
    }

    private static double ppm(String typed) throws BadInputException {
        try {
            double number = new BigDecimal(typed.strip().replace(',', '.')).doubleValue();
            if (number >= 0 && number < 1e6) {
                return number;
            }
        } catch (NumberFormatException notANumber) {
            // The sentence below says what is allowed.
        }
        throw new BadInputException("--instrument-scale: “" + typed + "” is not a number of ppm from 0 to a million.");
    }
}
