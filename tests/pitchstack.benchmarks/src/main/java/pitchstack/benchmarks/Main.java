// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/**
 * Runs all benchmarks, or those whose names match the arguments, and prints a table for each class of them as soon as it is
 * measured. With {@code --plots FOLDER} it draws cost against work instead; with {@code --sheets} it tells what a drawing costs
 * its thread.
 */
public final class Main {
    private static final String PLOTS = "--plots";
    private static final String SHEETS = "--sheets";
    private static final int WARM_UPS = 2;
    private static final int MEASUREMENTS = 5;
    private static final List<Class<?>> ALL = List.of(OneTarget.class, RackLength.class, Table.class, Rivals.class,
            EverySetting.class, CoverageMap.class, CoverageMapOfMeasuredRack.class, CoverageFloor.class, Seats.class, Sheets.class,
            Parts.class, PartRivals.class);

    private Main() { }

    /** Runs the benchmarks. */
    public static void main(String[] arguments) throws Exception {
        if (arguments.length == 1 && arguments[0].equals(SHEETS)) {
            SheetCost.print();
            return;
        }
        if (arguments.length == 2 && arguments[0].equals(PLOTS)) {
            Growth.draw(Path.of(arguments[1]));
            return;
        }
        List<String> names = arguments.length > 0 ? List.of(arguments)
                : ALL.stream().map(type -> "[.]" + type.getSimpleName() + "[.]").toList();
        System.out.println("| benchmark | problem | time |");
        System.out.println("|---|---|---|");
        for (String name : names) {
            print(new Runner(new OptionsBuilder().include(name).forks(1).warmupIterations(WARM_UPS)
                    .measurementIterations(MEASUREMENTS).warmupTime(TimeValue.seconds(1))
                    .measurementTime(TimeValue.seconds(1)).shouldFailOnError(true)
                    .jvmArgs("-Xmx1g", "-D" + Case.EXAMPLES + "=" + System.getProperty(Case.EXAMPLES))
                    .verbosity(VerboseMode.SILENT).build()).run());
        }
    }

    private static void print(Collection<RunResult> results) {
        TreeMap<String, String> lines = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark().replace("pitchstack.benchmarks.", "");
            Result<?> time = result.getPrimaryResult();
            String worn = isWorn(result) ? ", worn" : "";
            String problem = parameter(result, "problem") + worn;
            lines.put(name + problem, String.format(Locale.ROOT, "| %s | %s | %s ± %s %s |", name, problem,
                    number(time.getScore()), number(time.getScoreError()), time.getScoreUnit()));
        }
        lines.values().forEach(System.out::println);
    }

    private static boolean isWorn(RunResult result) {
        return Boolean.parseBoolean(parameter(result, "worn"));
    }

    private static String parameter(RunResult result, String key) {
        return Set.copyOf(result.getParams().getParamsKeys()).contains(key) ? result.getParams().getParam(key) : "";
    }

    /** Three significant digits. */
    private static String number(double value) {
        return value >= 100 ? String.format(Locale.ROOT, "%.0f", value) : String.format(Locale.ROOT, "%.3g", value);
    }
}
