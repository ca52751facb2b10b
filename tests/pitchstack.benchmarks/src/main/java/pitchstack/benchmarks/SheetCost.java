// SPDX-License-Identifier: EPL-2.0
package pitchstack.benchmarks;

import com.sun.management.ThreadMXBean;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;

/**
 * What {@link Sheets} costs its thread: time on a core, which other work on the machine does not lengthen as it lengthens
 * the time on the clock, and memory taken.
 */
final class SheetCost {
    private static final int ROUNDS = 7;
    private static final double NANOS_IN_MS = 1e6;
    private static final double BYTES_IN_MB = 1e6;

    private SheetCost() {
    }

    /** Prints a table with the median of each. */
    static void print() throws Exception {
        System.out.println("| | teeth of the rack | core time, first | core time, median | memory taken |");
        System.out.println("|---|---|---|---|---|");
        for (int teeth : new int[] {100, 100_000}) {
            for (Map.Entry<String, Callable<?>> part : parts(teeth).entrySet()) {
                System.out.println("| " + part.getKey() + " | " + teeth + measured(part.getValue()));
            }
        }
    }

    private static Map<String, Callable<?>> parts(int teeth) throws IOException {
        Sheets sheets = new Sheets();
        sheets.problem = teeth;
        sheets.read();
        Map<String, Callable<?>> parts = new LinkedHashMap<>();
        parts.put("compose", sheets::compose);
        parts.put("PDF", sheets::pdf);
        parts.put("SVG", sheets::svg);
        parts.put("DXF", sheets::dxf);
        parts.put("PDFBox Graphics2D", sheets::rivalPdf);
        parts.put("Batik SVGGraphics2D", sheets::rivalSvg);
        return parts;
    }

    private static String measured(Callable<?> part) throws Exception {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double[] ms = new double[ROUNDS];
        double mb = 0;
        for (int i = 0; i < ROUNDS; i++) {
            long time = threads.getCurrentThreadCpuTime();
            long memory = threads.getCurrentThreadAllocatedBytes();
            part.call();
            ms[i] = (threads.getCurrentThreadCpuTime() - time) / NANOS_IN_MS;
            mb = (threads.getCurrentThreadAllocatedBytes() - memory) / BYTES_IN_MB;
        }
        double first = ms[0];
        Arrays.sort(ms);
        return String.format(Locale.ROOT, " | %.0f ms | %.0f ms | %.1f MB |", first, ms[ROUNDS / 2], mb);
    }
}
