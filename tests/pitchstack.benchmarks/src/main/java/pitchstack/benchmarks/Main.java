// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import java.util.Collection;
import java.util.Locale;
import java.util.TreeMap;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.ChainedOptionsBuilder;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Runs all benchmarks, or those whose names match the arguments, and prints one table. */
public final class Main {
    private static final int WARM_UPS = 3;
    private static final int MEASUREMENTS = 5;

    private Main() { }

    /** Runs the benchmarks. */
    public static void main(String[] names) throws RunnerException {
        ChainedOptionsBuilder options = new OptionsBuilder().forks(1).warmupIterations(WARM_UPS)
                .measurementIterations(MEASUREMENTS).warmupTime(TimeValue.seconds(1))
                .measurementTime(TimeValue.seconds(1)).jvmArgs("-Xmx1g").verbosity(VerboseMode.SILENT);
        for (String name : names) {
            options.include(name);
        }
        print(new Runner(options.build()).run());
    }

    private static void print(Collection<RunResult> results) {
        TreeMap<String, String> lines = new TreeMap<>();
        for (RunResult result : results) {
            String name = result.getParams().getBenchmark().replace("pitchstack.benchmarks.", "");
            Result<?> time = result.getPrimaryResult();
            String worn = result.getParams().getParamsKeys().contains("worn")
                    ? (Boolean.parseBoolean(result.getParams().getParam("worn")) ? ", worn" : "") : "";
            String problem = result.getParams().getParamsKeys().contains("problem")
                    ? result.getParams().getParam("problem") + worn : "";
            lines.put(name + problem, String.format(Locale.ROOT, "| %s | %s | %s ± %s %s |", name, problem,
                    number(time.getScore()), number(time.getScoreError()), time.getScoreUnit()));
        }
        System.out.println("| benchmark | problem | time |");
        System.out.println("|---|---|---|");
        lines.values().forEach(System.out::println);
    }

    /** Three significant digits. */
    private static String number(double value) {
        return value >= 100 ? String.format(Locale.ROOT, "%.0f", value) : String.format(Locale.ROOT, "%.3g", value);
    }
}
