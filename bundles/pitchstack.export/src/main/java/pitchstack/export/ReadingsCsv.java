// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Direction;
import pitchstack.core.stack.Setting;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.export.ReadingColumns.Kind;
import pitchstack.export.ReadingList.Row;
import pitchstack.export.TargetList.BadRow;

/**
 * Reads and writes a table of readings: a column for the index of each stage, by its name or number, or for the target;
 * the position read; and, where they are known, direction (up or down), uncertainty and temperature. Separators, decimal
 * commas and units are as in {@link TargetsCsv}. A header is needed. A row without a position is still to be read; one
 * that cannot be read is reported by its line, and the others are kept.
 */
public final class ReadingsCsv {
    private static final Pattern INDEX = Pattern.compile("[-+]?[0-9]{1,9}");
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]{1,4}([.][0-9]{1,6})?");
    private static final Map<String, Direction> DIRECTIONS = Map.ofEntries(Map.entry("", Direction.UNKNOWN),
            Map.entry("unknown", Direction.UNKNOWN), Map.entry("up", Direction.FORWARD),
            Map.entry("forward", Direction.FORWARD), Map.entry("from below", Direction.FORWARD),
            Map.entry("+", Direction.FORWARD), Map.entry("↑", Direction.FORWARD), Map.entry("down", Direction.BACK),
            Map.entry("back", Direction.BACK), Map.entry("from above", Direction.BACK), Map.entry("-", Direction.BACK),
            Map.entry("↓", Direction.BACK));

    private final AxisSpec axis;
    private final Scale scale;
    private final boolean withTargets;
    private final List<Row> readings = new ArrayList<>();
    private final List<BadRow> bad = new ArrayList<>();
    private ReadingColumns columns;
    private boolean usable;
    private int open;

    private ReadingsCsv(AxisSpec axis, boolean withTargets) {
        this.axis = axis;
        this.withTargets = withTargets;
        scale = axis.scale();
    }

    /** Reads a table of settings and readings. */
    public static ReadingList read(String text, AxisSpec axis) {
        return new ReadingsCsv(axis, false).read(text);
    }

    /**
     * Reads a table of targets and readings.
     *
     * @param axis any, for its scale
     */
    public static ReadingList readTargets(String text, AxisSpec axis) {
        return new ReadingsCsv(axis, true).read(text);
    }

    /** The names of the columns that {@link #read} needs and takes. */
    static List<String> header(AxisSpec axis) {
        List<String> header = new ArrayList<>();
        for (int j = 0; j < axis.stages().size(); j++) {
            header.add(PlanCsv.stage(axis, j));
        }
        return header;
    }

    /** A direction as this table writes it. */
    static String word(Direction direction) {
        return switch (direction) {
            case FORWARD -> "up";
            case BACK -> "down";
            case UNKNOWN -> "";
        };
    }

    private ReadingList read(String text) {
        SpreadsheetText table = SpreadsheetText.of(text);
        bad.addAll(table.bad());
        table.rows().forEach(this::add);
        bad.sort((a, b) -> Integer.compare(a.line(), b.line()));
        return new ReadingList(readings, open, bad, columns == null ? List.of() : columns.ignored());
    }

    private void add(SpreadsheetText.Line line) {
        try {
            if (columns == null) {
                columns = new ReadingColumns(axis, line.cells());
                columns.require(withTargets);
                usable = true;
            } else if (usable) {
                addRow(line);
            }
        } catch (QuantityException e) {
            bad.add(new BadRow(line.number(), e.getMessage()));
        }
    }

    private void addRow(SpreadsheetText.Line line) {
        List<String> cells = line.cells();
        if (cells.size() > columns.columns()) {
            throw new QuantityException("This row has " + cells.size() + " cells, and there are " + columns.columns()
                    + " columns; put a cell with a separator in it in quotation marks, or name every column in the header.");
        }
        Setting setting = withTargets ? Setting.zero(0) : setting(cells);
        String position = columns.cell(Kind.POSITION, cells);
        if (position.isEmpty()) {
            open++;
            return;
        }
        readings.add(new Row(line.number(), setting, withTargets ? scale.parse(quantity(Kind.TARGET, cells)) : 0,
                quantity(Kind.POSITION, cells), direction(columns.cell(Kind.DIRECTION, cells)), uncertainty(cells),
                temperature(columns.cell(Kind.TEMPERATURE, cells))));
    }

    private Setting setting(List<String> cells) {
        Setting setting = Setting.zero(axis.stages().size());
        for (int j = 0; j < setting.size(); j++) {
            String index = columns.index(j, cells).replace('−', '-');
            if (!INDEX.matcher(index).matches()) {
                throw new QuantityException("The index of " + axis.stages().get(j).title(j) + " is “" + index
                        + "”; it must be a whole number.");
            }
            setting = setting.with(j, Integer.parseInt(index));
            if (axis.stages().get(j).rows().engagedBase(setting.index(j)).isEmpty()) {
                throw new QuantityException("The rows of " + axis.stages().get(j).title(j) + " do not meet at index " + index
                        + "; they do from " + axis.stages().get(j).rows().meeting().first() + " to "
                        + axis.stages().get(j).rows().meeting().last() + ".");
            }
        }
        return setting;
    }

    /** A cell as a text that the scale has read once. */
    private String quantity(Kind kind, List<String> cells) {
        String cell = columns.cell(kind, cells);
        if (cell.isEmpty()) {
            throw new QuantityException("This row has no " + kind.name().toLowerCase(Locale.ROOT) + ".");
        }
        String text = QuantityCell.text(cell, columns.unit(kind));
        scale.parse(text);
        return text;
    }

    private String uncertainty(List<String> cells) {
        if (columns.cell(Kind.UNCERTAINTY, cells).isEmpty()) {
            return "";
        }
        String text = quantity(Kind.UNCERTAINTY, cells);
        if (scale.parse(text) <= 0) {
            throw new QuantityException("The uncertainty “" + text + "” must be above 0.");
        }
        return text;
    }

    private static Direction direction(String cell) {
        Direction direction = DIRECTIONS.get(cell.toLowerCase(Locale.ROOT).replace('−', '-'));
        if (direction == null) {
            throw new QuantityException("The direction is “" + cell + "”; write up (from lower positions) or down.");
        }
        return direction;
    }

    private OptionalDouble temperature(String cell) {
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        String number = cell.replace(',', '.').replace('−', '-').replaceFirst("(?i)\\s*°?\\s*[CF]$", "");
        boolean fahrenheit = cell.toUpperCase(Locale.ROOT).endsWith("F")
                || !cell.toUpperCase(Locale.ROOT).endsWith("C") && columns.unit(Kind.TEMPERATURE).endsWith("F");
        if (!NUMBER.matcher(number).matches()) {
            throw new QuantityException("The temperature is “" + cell + "”; write it like 20.5, in °C.");
        }
        double value = Double.parseDouble(number);
        return OptionalDouble.of(fahrenheit ? (value - 32) / 1.8 : value);
    }
}
