// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a table of targets has what, and in which unit. */
final class TargetColumns {
    /** What a column may hold. */
    enum Kind {
        NAME(Set.of("name")),
        POSITION(Set.of("position", "pos", "x")),
        TOLERANCE(Set.of("tolerance", "tol", "±")),
        NOTE(Set.of("note", "notes"));

        private final Set<String> headers;

        Kind(Set<String> headers) {
            this.headers = headers;
        }
    }

    private static final Pattern HEADER = Pattern.compile("(.*?)\\s*(?:[(\\[]\\s*(.*?)\\s*[)\\]])?");

    private final Map<Kind, Integer> column = new EnumMap<>(Kind.class);
    private final Map<Kind, String> unit = new EnumMap<>(Kind.class);
    private final List<String> ignored = new ArrayList<>();
    private final int columns;

    private TargetColumns(int columns) {
        this.columns = columns;
    }

    /** A single column of positions without a header. */
    static TargetColumns positionsOnly() {
        TargetColumns only = new TargetColumns(1);
        only.column.put(Kind.POSITION, 0);
        return only;
    }

    /** The columns that a row names, in any case; empty where it names none, so that it is no header. */
    static Optional<TargetColumns> header(List<String> cells) {
        TargetColumns found = new TargetColumns(cells.size());
        for (int i = 0; i < cells.size(); i++) {
            found.add(i, cells.get(i));
        }
        return found.column.isEmpty() ? Optional.empty() : Optional.of(found);
    }

    private void add(int i, String header) {
        Matcher m = HEADER.matcher(header);
        String name = m.matches() ? m.group(1).toLowerCase(Locale.ROOT) : header;
        for (Kind kind : Kind.values()) {
            if (kind.headers.contains(name) && !column.containsKey(kind)) {
                column.put(kind, i);
                unit.put(kind, m.group(2) == null ? "" : m.group(2));
                return;
            }
        }
        if (!header.isEmpty()) {
            ignored.add(header);
        }
    }

    boolean has(Kind kind) {
        return column.containsKey(kind);
    }

    /** The unit in the header of a column, or nothing. */
    String unit(Kind kind) {
        return unit.getOrDefault(kind, "");
    }

    /** The cell of a kind in a row, or nothing. */
    String cell(Kind kind, List<String> row) {
        Integer i = column.get(kind);
        return i == null || i >= row.size() ? "" : row.get(i);
    }

    int columns() {
        return columns;
    }

    List<String> ignored() {
        return ignored;
    }
}
