// SPDX-License-Identifier: EPL-2.0
package pitchstack.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.Scale;
import pitchstack.export.TargetColumns.Kind;
import pitchstack.export.TargetList.BadRow;
import pitchstack.export.TargetList.Row;

/**
 * Reads a table of targets as spreadsheets write it: commas, semicolons or tabs between the cells, a decimal comma or
 * point, a unit in the header or in the cell, else that of the axis. A header names the columns: name, position,
 * tolerance, note, in any order and case; without a header there are positions alone. A row that cannot be read is
 * reported, and the others are kept.
 */
public final class TargetsCsv {
    private final Scale scale;
    private final List<Row> targets = new ArrayList<>();
    private final List<BadRow> bad = new ArrayList<>();
    private TargetColumns columns;

    private TargetsCsv(Scale scale) {
        this.scale = scale;
    }

    /**
     * Reads a table.
     *
     * @param text the text of the file, or what was pasted
     * @param scale the scale of the axis
     */
    public static TargetList read(String text, Scale scale) {
        TargetsCsv reader = new TargetsCsv(scale);
        SpreadsheetText table = SpreadsheetText.of(text);
        reader.bad.addAll(table.bad());
        table.rows().forEach(reader::add);
        reader.bad.sort((a, b) -> Integer.compare(a.line(), b.line()));
        return new TargetList(reader.targets, reader.bad,
                reader.columns == null ? List.of() : reader.columns.ignored());
    }

    private void add(SpreadsheetText.Line line) {
        try {
            if (columns == null) {
                Optional<TargetColumns> header = TargetColumns.header(line.cells());
                columns = header.orElseGet(TargetColumns::positionsOnly);
                if (header.isPresent()) {
                    checkHeader();
                    return;
                }
            }
            if (columns.has(Kind.POSITION)) {
                targets.add(row(line));
            }
        } catch (QuantityException e) {
            bad.add(new BadRow(line.number(), e.getMessage()));
        }
    }

    private void checkHeader() {
        if (!columns.has(Kind.POSITION)) {
            throw new QuantityException("No column is called “position”, so no row can be read; name the columns name, "
                    + "position, tolerance and note.");
        }
        for (Kind kind : List.of(Kind.POSITION, Kind.TOLERANCE)) {
            if (!columns.unit(kind).isEmpty()) {
                scale.parse("1 " + columns.unit(kind));
            }
        }
    }

    private Row row(SpreadsheetText.Line line) {
        List<String> cells = line.cells();
        if (cells.size() > columns.columns()) {
            throw new QuantityException("This row has " + cells.size() + " cells, and there "
                    + (columns.columns() == 1 ? "is 1 column" : "are " + columns.columns() + " columns")
                    + "; put a cell with a separator in it in quotation marks, or name every column in a header.");
        }
        String position = columns.cell(Kind.POSITION, cells);
        if (position.isEmpty()) {
            throw new QuantityException("This row has no position.");
        }
        String tolerance = columns.cell(Kind.TOLERANCE, cells);
        return new Row(line.number(), columns.cell(Kind.NAME, cells), count(Kind.POSITION, position),
                tolerance.isEmpty() ? OptionalLong.empty() : OptionalLong.of(tolerance(tolerance)),
                columns.cell(Kind.NOTE, cells));
    }

    private long tolerance(String text) {
        long count = count(Kind.TOLERANCE, text.startsWith("±") ? text.substring(1).strip() : text);
        if (count < 0) {
            throw new QuantityException("The tolerance “" + text + "” is below 0; a tolerance counts to both sides, so give"
                    + " it without a sign.");
        }
        return count;
    }

    private long count(Kind kind, String text) {
        return scale.parse(QuantityCell.text(text, columns.unit(kind)));
    }
}
