// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.plot;

import java.awt.Color;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.Rectangle;
import java.util.Comparator;
import java.util.List;
import pitchstack.core.accuracy.budget.BudgetResult;
import pitchstack.core.accuracy.budget.Persistence;

/**
 * Which part of the uncertainty each contribution makes, the largest first: filled where it repeats, hatched where it
 * differs each time. A share below 0, which takes away from others, goes to the left of the line.
 *
 * @param budget with its shares
 */
public record BudgetBars(BudgetResult budget) implements Plot {
    private static final int HATCH = 5;
    private static final double FAINT = 0.25;
    private static final double BAR_PART = 0.7;
    private static final String REPEATS = "repeats";
    private static final String DIFFERS = "differs each time";

    private List<BudgetResult.Line> sorted() {
        return budget.lines().stream().sorted(Comparator.comparingDouble((BudgetResult.Line l) -> -Math.abs(l.share())))
                .toList();
    }

    @Override
    public Picture draw(PlotLook look) {
        return LineChart.paint(look, g -> new Painter(g, look).paint(sorted()));
    }

    private static boolean repeats(BudgetResult.Line line) {
        return line.contribution().persistence() == Persistence.REPEATS;
    }

    @Override
    public String description() {
        StringBuilder said = new StringBuilder("Parts of the uncertainty, as parts of its square:");
        for (BudgetResult.Line line : sorted()) {
            said.append(' ').append(line.contribution().name()).append(' ').append(Figures.percent(line.share()))
                    .append(repeats(line) ? ", repeats;" : ", differs each time;");
        }
        return said.append(" all of it 100 %.").toString();
    }

    /** Rows from the top: a name, a bar, a number; at the bottom what filled and hatched mean. */
    private static final class Painter {
        private final Graphics2D g;
        private final PlotLook look;
        private final FontMetrics metrics;
        private final int pad;

        Painter(Graphics2D g, PlotLook look) {
            this.g = g;
            this.look = look;
            g.setFont(LineChart.font(look));
            metrics = g.getFontMetrics();
            pad = metrics.getHeight() / 2;
        }

        void paint(List<BudgetResult.Line> lines) {
            g.setColor(new Color(look.palette().ground()));
            g.fillRect(0, 0, look.width(), look.height());
            int rowHeight = metrics.getHeight() * 3 / 2;
            int room = Math.max(1, (look.height() - (1 + legendRows()) * rowHeight) / rowHeight);
            List<BudgetResult.Line> shown = lines.size() <= room ? lines : lines.subList(0, Math.max(1, room - 1));
            int names = shown.stream().mapToInt(l -> metrics.stringWidth(l.contribution().name())).max().orElse(0);
            names = Math.min(names, look.width() / 2);
            double low = Math.min(0, shown.stream().mapToDouble(BudgetResult.Line::share).min().orElse(0));
            double high = Math.max(0.01, shown.stream().mapToDouble(BudgetResult.Line::share).max().orElse(1));
            int left = pad + names + pad;
            int width = Math.max(1, look.width() - left - 2 * pad - metrics.stringWidth("−100 %"));
            double perShare = width / (high - low);
            int zero = left + (int) Math.round(-low * perShare);
            int y = pad / 2;
            for (BudgetResult.Line line : shown) {
                row(line, names, y, rowHeight, zero, (int) Math.round(line.share() * perShare));
                y += rowHeight;
            }
            if (shown.size() < lines.size()) {
                double rest = lines.stream().skip(shown.size()).mapToDouble(BudgetResult.Line::share).sum();
                text((lines.size() - shown.size()) + " more, together " + Figures.percent(rest), pad, y, rowHeight);
            }
            g.setColor(look.palette().faint(look.palette().text(), 0.5));
            g.drawLine(zero, 0, zero, pad / 2 + shown.size() * rowHeight);
            legend(rowHeight);
        }

        private void row(BudgetResult.Line line, int names, int y, int rowHeight, int zero, int length) {
            text(fitting(line.contribution().name(), names), pad, y, rowHeight);
            int thick = (int) (rowHeight * BAR_PART);
            Rectangle bar = new Rectangle(Math.min(zero, zero + length), y + (rowHeight - thick) / 2,
                    Math.max(1, Math.abs(length)), thick);
            bar(bar, repeats(line));
            text(Figures.percent(line.share()), zero + Math.max(0, length) + pad / 2, y, rowHeight);
        }

        private void legend(int rowHeight) {
            int y = look.height() - legendRows() * rowHeight;
            int right = entry(REPEATS, true, pad, y, rowHeight);
            if (legendRows() == 1) {
                entry(DIFFERS, false, right + 2 * pad, y, rowHeight);
            } else {
                entry(DIFFERS, false, pad, y + rowHeight, rowHeight);
            }
        }

        /** Two where both entries beside each other are too wide. */
        private int legendRows() {
            int wide = 2 * (2 * metrics.getAscent() + pad / 2) + metrics.stringWidth(REPEATS) + metrics.stringWidth(DIFFERS);
            return wide + 4 * pad <= look.width() ? 1 : 2;
        }

        private int entry(String words, boolean repeats, int x, int y, int rowHeight) {
            int box = metrics.getAscent();
            bar(new Rectangle(x, y + (rowHeight - box) / 2, 2 * box, box), repeats);
            int text = x + 2 * box + pad / 2;
            text(words, text, y, rowHeight);
            return text + metrics.stringWidth(words);
        }

        private void bar(Rectangle bar, boolean repeats) {
            Palette palette = look.palette();
            int colour = repeats ? palette.first() : palette.second();
            g.setColor(repeats ? new Color(colour) : palette.faint(colour, FAINT));
            g.fill(bar);
            g.setColor(new Color(colour));
            if (!repeats) {
                Graphics2D inside = (Graphics2D) g.create();
                inside.clip(bar);
                for (int x = bar.x - bar.height; x < bar.x + bar.width; x += HATCH) {
                    inside.drawLine(x, bar.y + bar.height, x + bar.height, bar.y);
                }
                inside.dispose();
            }
            g.draw(bar);
        }

        private void text(String text, int x, int y, int rowHeight) {
            g.setColor(new Color(look.palette().text()));
            g.drawString(text, x, y + (rowHeight - metrics.getHeight()) / 2 + metrics.getAscent());
        }

        private String fitting(String text, int width) {
            String kept = text;
            while (kept.length() > 1 && metrics.stringWidth(kept) > width) {
                kept = kept.substring(0, kept.length() - 2).stripTrailing() + "…";
            }
            return kept;
        }
    }
}
