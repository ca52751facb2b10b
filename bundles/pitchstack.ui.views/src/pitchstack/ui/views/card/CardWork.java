// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.card;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.TargetStops;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Progress;
import pitchstack.core.plan.SequenceRequest;
import pitchstack.export.card.CardAnswer;
import pitchstack.export.card.CardFormat;
import pitchstack.export.card.CardMaker;
import pitchstack.export.card.CardRequest;
import pitchstack.export.card.CardSheets;
import pitchstack.export.card.SettingCard;
import pitchstack.export.drawing.Drawing;
import pitchstack.export.drawing.DrawingPreview;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.LiberationSans;
import pitchstack.model.Positioner;
import pitchstack.ui.views.export.ExportWork;
import pitchstack.ui.views.export.ExportWork.None;
import pitchstack.ui.views.export.ExportWork.Ready;

/** Plans the targets of an axis and sets them on a card, away from the interface thread. */
final class CardWork {
    private CardWork() {
    }

    /**
     * The card as a file, or why there is none.
     *
     * @param number of the axis, from 0; below that where there is none
     */
    static ExportWork of(Positioner positioner, int number, CardChoices choices, Progress progress) {
        if (number < 0) {
            return new None("There is no axis yet, and so nothing to set.");
        }
        AxisAnalysis analysis = AxisAnalysis.of(positioner, positioner.getAxes().get(number));
        Optional<Finding> error = analysis.findings().stream().filter(finding -> finding.severity() == Severity.ERROR)
                .findFirst();
        if (error.isPresent()) {
            return new None("Nothing can be planned before this is mended: " + error.get().sentence());
        }
        TargetStops targets = TargetStops.of(analysis);
        if (targets.stops().isEmpty()) {
            return new None(targets.unread().isEmpty() ? "Axis “" + analysis.spec().name()
                    + "” has no targets yet; add some in the Target list." : targets.unread().get(0));
        }
        CardAnswer answer = CardMaker.make(new CardRequest(positioner, analysis, targets.stops(), choices.order(),
                choices.worn(), SequenceRequest.DEFAULT_MEMORY,
                DrawingRequest.issued(positioner).orElse(LocalDate.now())), analysis.planner().orElseThrow(), progress);
        if (answer instanceof CardAnswer.Made made) {
            return ready(made.card(), choices.format(), targets.unread());
        }
        return new None(answer instanceof CardAnswer.Refused refused ? refused.sentence() : "The planning was stopped.");
    }

    private static Ready ready(SettingCard card, CardFormat format, List<String> unread) {
        LiberationSans letters = new LiberationSans();
        List<Drawing> sheets = CardSheets.of(card, letters);
        List<SettingCard.Entry> leftOut = card.entries().stream().filter(entry -> entry.way().isEmpty()).toList();
        List<String> remarks = new ArrayList<>(unread);
        leftOut.forEach(entry -> remarks.add("Left out: " + entry.number() + (entry.name().isBlank() ? "" : ". " + entry.name())
                + ": " + entry.whyNot()));
        String words = counted(card.entries().size(), "target") + (leftOut.isEmpty() ? "" : ", " + leftOut.size()
                + " of them left out") + (format == CardFormat.PDF ? ", " + counted(sheets.size(), "sheet") + " of A4" : "");
        return new Ready(format.bytes(card), DrawingPreview.of(sheets.get(0), letters, ExportWork.PREVIEW_PX),
                "the first of " + counted(sheets.size(), "sheet"), words, remarks);
    }

    private static String counted(int number, String what) {
        return number + " " + what + (number == 1 ? "" : "s");
    }
}
