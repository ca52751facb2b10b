// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.QuantityException;

/** Where a table of readings has what, and in which unit. */
final class ReadingColumns {
    /** What a column may hold beside an index. */
    enum Kind {
        POSITION(Set.of("position", "reading", "measured", "value")),
        TARGET(Set.of("target")),
        DIRECTION(Set.of("direction", "approach", "side")),
        UNCERTAINTY(Set.of("uncertainty", "u")),
        TEMPERATURE(Set.of("temperature", "temp")),
        /** What a plan writes for people. */
        FOR_PEOPLE(Set.of("run", "expected", "no", "no.", "note", "notes", "residual"));

        private final Set<String> headers;

        Kind(Set<String> headers) {
            this.headers = headers;
        }
    }

    private static final Pattern HEADER = Pattern.compile("(.*?)\\s*(?:[(\\[]\\s*(.*?)\\s*[)\\]])?");
    private static final int NONE = -1;

    private final AxisSpec axis;
    private final int[] stages;
    private final Map<Kind, Integer> column = new EnumMap<>(Kind.class);
    private final Map<Kind, String> unit = new EnumMap<>(Kind.class);
    private final List<String> ignored = new ArrayList<>();
    private final int columns;

    /** The columns that a header names. */
    ReadingColumns(AxisSpec axis, List<String> cells) {
        this.axis = axis;
        columns = cells.size();
        stages = new int[axis.stages().size()];
        Arrays.fill(stages, NONE);
        for (int i = 0; i < columns; i++) {
            if (!isStage(cells.get(i), i)) {
                add(cells.get(i), i);
            }
        }
    }

    /** A stage is named by its name, or by its number from 1, with or without the word stage before and index behind. */
    private boolean isStage(String header, int place) {
        for (int j = 0; j < stages.length; j++) {
            String name = axis.stages().get(j).name().strip();
            boolean named = !name.isEmpty() && header.matches("(?i)" + Pattern.quote(name) + "(\\s+index)?");
            if (stages[j] == NONE && (named || header.matches("(?i)(stage\\s*)?" + (j + 1) + "(\\s+index)?"))) {
                stages[j] = place;
                return true;
            }
        }
        return false;
    }

    private void add(String header, int place) {
        Matcher m = HEADER.matcher(header);
        String name = m.matches() ? m.group(1).toLowerCase(Locale.ROOT) : header;
        for (Kind kind : Kind.values()) {
            if (kind.headers.contains(name) && (kind == Kind.FOR_PEOPLE || !column.containsKey(kind))) {
                column.put(kind, place);
                unit.put(kind, m.group(2) == null ? "" : m.group(2));
                return;
            }
        }
        if (!header.isEmpty()) {
            ignored.add(header);
        }
    }

    /**
     * Checks that what a row needs has a column.
     *
     * @param withTargets whether positions are compared with targets instead of settings
     * @throws QuantityException with a sentence if not
     */
    void require(boolean withTargets) {
        for (int j = 0; j < stages.length && !withTargets; j++) {
            if (stages[j] == NONE) {
                throw new QuantityException("No column gives the index of " + axis.stages().get(j).title(j) + "; name one “"
                        + PlanCsv.stage(axis, j) + "” or “Stage " + (j + 1) + "”.");
            }
        }
        if (withTargets && !column.containsKey(Kind.TARGET)) {
            throw new QuantityException("No column is called “target”, which says where the carriage was meant to stand.");
        }
        if (!column.containsKey(Kind.POSITION)) {
            throw new QuantityException("No column is called “position” or “reading”, which holds what the instrument showed.");
        }
        for (Kind kind : List.of(Kind.POSITION, Kind.TARGET, Kind.UNCERTAINTY)) {
            if (!unit(kind).isEmpty()) {
                axis.scale().parse("1 " + unit(kind));
            }
        }
    }

    /** The cell of the index of a stage. */
    String index(int stage, List<String> row) {
        return stages[stage] < row.size() ? row.get(stages[stage]) : "";
    }

    /** The cell of a kind in a row, or nothing. */
    String cell(Kind kind, List<String> row) {
        Integer i = column.get(kind);
        return i == null || i >= row.size() ? "" : row.get(i);
    }

    /** The unit in the header of a column, or nothing. */
    String unit(Kind kind) {
        return unit.getOrDefault(kind, "");
    }

    int columns() {
        return columns;
    }

    List<String> ignored() {
        return ignored;
    }
}
