// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.PrintWriter;
import java.util.List;
import pitchstack.core.coverage.RowSeatings;

/** Where a list wears the rows, for a person. */
final class WearText {
    private static final int MOST_SPANS = 5;

    private final PrintWriter out;
    private final WearLog log;

    /**
     * @param out takes the text
     * @param log what is to be told
     */
    WearText(PrintWriter out, WearLog log) {
        this.out = out;
        this.log = log;
    }

    /** Writes one paragraph a row. */
    void write(String title, List<String> unread) {
        int stops = log.reached() + log.leftOut();
        out.println(title + ", axis “" + log.axis().name() + "”: " + stops + (stops == 1 ? " stop " : " stops ")
                + TableText.words(log.order()));
        out.println("Reached: " + log.reached() + " of " + stops);
        log.seatings().rows().forEach(this::write);
        if (!unread.isEmpty()) {
            out.println();
            unread.forEach(out::println);
        }
    }

    private void write(RowSeatings row) {
        String name = log.axis().stages().get(row.stage()).name();
        out.println();
        out.println((name.isBlank() ? "Stage " + (row.stage() + 1) : name) + ", " + row.row().word() + " row of "
                + row.counts().length + (row.counts().length == 1 ? " tooth" : " teeth"));
        if (row.most() == 0) {
            out.println("  Never seated.");
            return;
        }
        boolean one = row.teeth(row.most()) == 1;
        out.println("  Seated most: " + (one ? "tooth " : "teeth ") + row.mostUsed(MOST_SPANS) + ", " + times(row.most())
                + (one ? "" : " each"));
        int never = row.teeth(0);
        out.println("  Never seated: " + (never == 0 ? "none" : never == 1 ? "1 tooth" : never + " teeth"));
    }

    private static String times(int count) {
        return count == 1 ? "once" : count == 2 ? "twice" : count + " times";
    }
}
