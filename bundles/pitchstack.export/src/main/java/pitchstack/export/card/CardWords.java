// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.plan.Wording;
import pitchstack.core.stack.Approach;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Stage;
import pitchstack.model.TitleBlock;

/** The sentences of a card. */
final class CardWords {
    /** As on the fixture drawing, and what goes wrong when counts are read. */
    static final List<String> CAUTIONS = List.of(
            "Isolate and lock out the machine before you reach in or move a stage; never adjust with a blade or ram "
                    + "running.",
            "A printed stage is a positioning aid: never a guard, and never in the load path. On a saw, set the stop "
                    + "ahead of the blade, so that the off-cut is free.",
            "One tooth miscounted is a whole pitch: compare with an independent scale before the first cut, after a knock, "
                    + "a new clamping, a new season. What stands here is computed, not measured.",
            "The machine maker's manual, local codes and licensed practice come first.");

    private CardWords() {
    }

    static SettingCard.Head head(CardRequest request) {
        TitleBlock block = request.positioner().getTitleBlock();
        String title = text(request.positioner().getTitle());
        return block == null ? new SettingCard.Head(title, "", "", "", request.date())
                : new SettingCard.Head(title, text(block.getOwner()), text(block.getNumber()), text(block.getRevision()),
                        request.date());
    }

    /** For what the counts hold. */
    static List<String> holds(CardRequest request) {
        List<String> holds = new ArrayList<>();
        double celsius = request.positioner().getTemperatureC();
        AxisSpec axis = request.analysis().spec();
        if (axis.scale().turn() == 0) {
            holds.add("For stages at " + number(celsius) + " °C. Positions are true lengths; a steel scale at the same "
                    + "temperature reads them short or long by its own growth from 20 °C.");
        }
        for (int j = 0; j < axis.stages().size(); j++) {
            correction(request.analysis().axis().getStages().get(j), j).ifPresent(holds::add);
        }
        if (axis.approach() != Approach.EITHER) {
            holds.add("Every stage ends its move " + (axis.approach() == Approach.FORWARD ? "forward" : "back")
                    + "; the steps say when to go one tooth further and come back.");
        }
        return holds;
    }

    private static Optional<String> correction(Stage stage, int place) {
        double ppm = stage.getCorrectionPpm();
        if (ppm == 0 && stage.getCorrectionRun() == null) {
            return Optional.empty();
        }
        String name = text(stage.getName()).isBlank() ? "Stage " + (place + 1) : stage.getName();
        double uncertain = stage.getCorrectionUncertaintyPpm();
        MeasurementRun run = stage.getCorrectionRun();
        return Optional.of(name + ": pitch corrected by " + (ppm > 0 ? "+" : "") + number(ppm) + " ppm"
                + (uncertain > 0 ? " (standard uncertainty " + number(uncertain) + " ppm)" : "")
                + (run == null ? "" : ", measured" + (text(run.getDate()).isBlank() ? "" : " " + run.getDate()) + " at "
                        + number(run.getTemperatureC()) + " °C") + ".");
    }

    /** The position to find on an independent scale. */
    static String reads(SettingCard card, SettingCard.Way way) {
        return TrueMinus.in(card.axis().scale().format(way.fromPrevious().position()));
    }

    /** How far off the target it stands, and how far off it may. */
    static String error(SettingCard card, SettingCard.Entry entry, SettingCard.Way way) {
        String tolerance = entry.tolerance() == 0 ? ""
                : ", ±" + card.axis().scale().formatSize(entry.tolerance()) + " allowed";
        return "Target " + TrueMinus.in(card.axis().scale().format(entry.target())) + ": "
                + new Wording(card.axis()).position(way.fromPrevious()).replaceFirst("^[^,]*, ", "") + tolerance + ".";
    }

    /** The steps of a move on one line. */
    static String steps(SettingCard card, PlannedSetting move) {
        return move.steps().isEmpty() ? "nothing to move."
                : String.join(" ", new Wording(card.axis()).steps(move));
    }

    /** What the steps from home are, or that there are none. */
    static String fromHome(SettingCard card, SettingCard.Way way) {
        return way.fromHome().map(move -> steps(card, move))
                .orElse("the limits of the stack let no move lead here; go by way of the entry before.");
    }

    /** Where counting starts. */
    static String home(SettingCard card) {
        return TrueMinus.in("Home: " + new Wording(card.axis()).setting(card.home()) + "; the carriage then stands at "
                + card.axis().scale().format(card.axis().position(card.home())) + ".");
    }

    static String title(SettingCard.Entry entry) {
        return entry.number() + (entry.name().isBlank() ? "" : ". " + entry.name());
    }

    static String number(double value) {
        return TrueMinus.in(new BigDecimal(value).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros()
                .toPlainString());
    }

    static String text(String text) {
        return text == null ? "" : text.strip();
    }
}
