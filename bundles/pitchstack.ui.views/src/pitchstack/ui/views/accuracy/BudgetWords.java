// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.analysis.accuracy.BudgetLine;
import pitchstack.analysis.accuracy.SettingFigures;
import pitchstack.core.accuracy.budget.BudgetResult;

/**
 * What is said of a budget.
 *
 * @param sizes how sizes are written
 */
record BudgetWords(Sizes sizes) {
    private static final String LAW = "The squares of all contributions are added, those that hang together with their"
            + " correlation: u² = Σ Σ cᵢ cⱼ uᵢ uⱼ rᵢⱼ (JCGM 100:2008, the “GUM”, equation 16). The half width that"
            + " holds the position with 95 %% probability is k·u; k = %.2f is Student's factor for %s effective degrees"
            + " of freedom after Welch and Satterthwaite (equation G.2b). As squares are added, the part that repeats"
            + " and the part that differs make less together than their sum.";
    /** Said once, where a person decides how far to trust a number. */
    static final String CAUTIONS = "Keep in mind: printed teeth creep under a lasting preload and soften in heat; let"
            + " the clamp go when the work is done, and keep them out of the sun. Check a setting with a gauge before"
            + " the first part, and again after a knock, another season or a new part.";

    /** The first line. */
    String head(SettingFigures figures, BudgetForm.Ask ask) {
        BudgetResult result = figures.result();
        String within = sizes.within(result.expanded()) + " of what is counted (95 %)";
        String first = ask == BudgetForm.Ask.WORST ? "Every setting should stand within " + within + ". "
                : "This setting should stand within " + within + ". ";
        return first + parts(result);
    }

    private String parts(BudgetResult result) {
        String repeats = sizes.within(result.factor() * result.repeating());
        String varies = sizes.within(result.factor() * result.varying());
        if (result.combined() == 0) {
            return "Nothing is known to be uncertain.";
        }
        return result.varying() == 0 ? "All of it repeats and can be measured away."
                : repeats + " repeats and can be measured away; " + varies + " differs each time.";
    }

    /**
     * Where the numbers come from.
     *
     * @param chosen the line that is said first
     */
    String sources(SettingFigures figures, Looked looked, Optional<BudgetLine> chosen) {
        BudgetResult result = figures.result();
        StringBuilder words = new StringBuilder();
        chosen.ifPresent(line -> words.append(line.name() + ". " + numbers(line) + " " + line.model() + "\n\n"));
        words.append("How they are combined. ").append(String.format(Locale.ROOT, LAW, result.factor(),
                freedom(result.degreesOfFreedom())));
        figures.sharing().ifPresent(sentence -> words.append(' ').append(sentence));
        add(words, "What stands behind each line.", models(figures));
        add(words, "What was assumed, as the file does not say.", looked.budget().reading().assumptions());
        add(words, "What could not be read, and was left out.", looked.budget().reading().unreadable());
        return words.toString();
    }

    /** Every model once, with the lines it stands behind. */
    private static List<String> models(SettingFigures figures) {
        Map<String, String> byModel = new LinkedHashMap<>();
        for (BudgetLine line : figures.lines()) {
            byModel.merge(line.model(), line.name(), (some, more) -> some + ", " + more);
        }
        return byModel.entrySet().stream().filter(one -> !one.getKey().isBlank())
                .map(one -> one.getValue() + ": " + one.getKey()).toList();
    }

    private String numbers(BudgetLine line) {
        return "It makes " + sizes.small(line.uncertaintyM()) + " (1 σ), " + line.distribution() + ", known "
                + (line.type().equals("A") ? "by readings" : "by other knowledge than readings") + " with "
                + freedom(line.input().degreesOfFreedom()) + " degrees of freedom.";
    }

    private static String freedom(double freedom) {
        return Double.isInfinite(freedom) || freedom > 1e6 ? "unlimited" : Long.toString((long) Math.floor(freedom));
    }

    static void add(StringBuilder words, String title, List<String> sentences) {
        if (!sentences.isEmpty()) {
            words.append("\n\n").append(title).append('\n')
                    .append(sentences.stream().map(s -> "• " + s).collect(Collectors.joining("\n")));
        }
    }
}
