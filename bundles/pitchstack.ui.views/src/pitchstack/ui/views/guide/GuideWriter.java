// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.CustomBlock;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListItem;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import pitchstack.ui.views.guide.GuideText.Indent;
import pitchstack.ui.views.guide.GuideText.Look;
import pitchstack.ui.views.guide.GuideText.Span;
import pitchstack.ui.views.guide.GuideText.Table;

/** Turns a page of Markdown into text with marks. Raw HTML is left out. */
final class GuideWriter extends AbstractVisitor {
    private final StringBuilder out = new StringBuilder();
    private final List<Span> spans = new ArrayList<>();
    private final List<Indent> indents = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private final Map<String, Integer> anchors = new HashMap<>();
    private int depth;

    private GuideWriter() {
    }

    /** Reads Markdown with tables. */
    static GuideText write(String markdown) {
        Node page = Parser.builder().extensions(List.of(TablesExtension.create())).build().parse(markdown);
        GuideWriter writer = new GuideWriter();
        page.accept(writer);
        return new GuideText(writer.out.toString().stripTrailing() + "\n", writer.spans, writer.indents,
                writer.tables, writer.anchors);
    }

    @Override
    public void visit(Heading heading) {
        gap(1);
        int start = out.length();
        marked(heading.getLevel() == 1 ? Look.TITLE : Look.HEADING, "", heading);
        anchors.putIfAbsent(anchor(out.substring(start)), start);
        gap(1);
    }

    /** The name of a heading in links, as repositories' Markdown pages form it. */
    private static String anchor(String heading) {
        return heading.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N} _-]", "").replace(' ', '-');
    }

    @Override
    public void visit(Paragraph paragraph) {
        visitChildren(paragraph);
        gap(paragraph.getParent() instanceof ListItem ? 0 : 1);
    }

    @Override
    public void visit(BulletList list) {
        items(list, 0);
    }

    @Override
    public void visit(OrderedList list) {
        items(list, list.getMarkerStartNumber());
    }

    /** @param number the first number, or 0 for bullets */
    private void items(Node list, int number) {
        depth++;
        int next = number;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            gap(0);
            int start = out.length();
            out.append(number == 0 ? "•  " : next++ + ".  ");
            visitChildren(item);
            indents.add(new Indent(start, out.length(), depth));
        }
        depth--;
        gap(depth == 0 ? 1 : 0);
    }

    @Override
    public void visit(FencedCodeBlock code) {
        literal(code.getLiteral());
    }

    @Override
    public void visit(IndentedCodeBlock code) {
        literal(code.getLiteral());
    }

    @Override
    public void visit(CustomBlock block) {
        if (block instanceof TableBlock table) {
            TableCells cells = TableCells.of(table);
            if (cells.areNarrow()) {
                sideBySide(cells);
            } else {
                belowEachOther(cells);
            }
            gap(1);
        }
    }

    private void sideBySide(TableCells cells) {
        int start = out.length();
        for (List<TableCell> row : cells.rows()) {
            for (int column = 0; column < row.size(); column++) {
                out.append(column == 0 ? "" : "\t");
                cell(row.get(column));
            }
            out.append('\n');
        }
        tables.add(new Table(start, out.length()));
    }

    private void belowEachOther(TableCells cells) {
        for (List<TableCell> row : cells.body()) {
            marked(Look.STRONG, "", row.get(0));
            int start = out.append('\n').length();
            for (int column = 1; column < row.size(); column++) {
                cell(cells.heading().get(column));
                out.append(": ");
                cell(row.get(column));
                out.append('\n');
            }
            indents.add(new Indent(start, out.length(), 1));
        }
    }

    private void cell(TableCell cell) {
        if (cell.isHeader()) {
            marked(Look.STRONG, "", cell);
        } else {
            visitChildren(cell);
        }
    }

    private void literal(String lines) {
        gap(0);
        int start = out.length();
        out.append(lines.stripTrailing());
        spans.add(new Span(Look.CODE, start, out.length(), ""));
        indents.add(new Indent(start, out.length(), 1));
        gap(1);
    }

    @Override
    public void visit(Text text) {
        out.append(text.getLiteral());
    }

    @Override
    public void visit(Code code) {
        int start = out.length();
        out.append(code.getLiteral());
        spans.add(new Span(Look.CODE, start, out.length(), ""));
    }

    @Override
    public void visit(Emphasis emphasis) {
        marked(Look.EMPHASIS, "", emphasis);
    }

    @Override
    public void visit(StrongEmphasis strong) {
        marked(Look.STRONG, "", strong);
    }

    @Override
    public void visit(Link link) {
        marked(Look.LINK, link.getDestination(), link);
    }

    /** The text of a picture is for those who cannot see it, so it stays out of the page itself. */
    @Override
    public void visit(Image image) {
        spans.add(new Span(Look.PICTURE, out.length(), out.length() + 1, image.getDestination()));
        out.append(GuideText.PICTURE);
    }

    @Override
    public void visit(SoftLineBreak space) {
        out.append(' ');
    }

    @Override
    public void visit(HardLineBreak line) {
        out.append('\n');
    }

    private void marked(Look look, String goal, Node node) {
        int start = out.length();
        visitChildren(node);
        spans.add(new Span(look, start, out.length(), goal));
    }

    /** Ends the line, and leaves empty lines below it; never more than one pair of them in a row. */
    private void gap(int emptyLines) {
        if (out.length() == 0) {
            return;
        }
        int ends = 0;
        while (ends < out.length() && out.charAt(out.length() - 1 - ends) == '\n') {
            ends++;
        }
        out.append("\n".repeat(Math.max(0, 1 + emptyLines - ends)));
    }
}
