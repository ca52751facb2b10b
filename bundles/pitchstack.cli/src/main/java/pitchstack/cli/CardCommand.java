// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.plan.StopOrder;
import pitchstack.export.card.CardAnswer;
import pitchstack.export.card.CardFormat;
import pitchstack.export.card.CardMaker;
import pitchstack.export.card.CardRequest;
import pitchstack.export.card.SettingCard;
import pitchstack.export.drawing.DrawingRequest;

/** Writes the card that lies at the machine. */
@Command(name = "card", sortOptions = false, header = "Writes the setting card that lies at the machine.",
        customSynopsis = "pitchstack card FILE --out NAME.pdf|NAME.html|NAME.xlsx|NAME.csv [--force]%n"
                + "                       [--targets LIST.csv] [--order given|free|one-by-one] [--memory MB]%n"
                + "                       [--worn allow|avoid|never] [--approach forward|back|either]%n"
                + "                       [--axis NAME] [--temperature T] [--date YYYY-MM-DD] [--json]",
        parameterListHeading = "%n", optionListHeading = "%nOptions:%n",
        description = "%nThe card has the stage counts of every target in large type, what an independent scale then reads, the "
                + "steps from home and from the entry before, and what counts are worth. Home is index 0 of every stage, or "
                + "the index nearest to it. The same file and date give the same card, byte for byte.",
        footer = {"",
            "Examples:",
            "  pitchstack card fence.pitchstack --out fence.pdf",
            "  pitchstack card fence.pitchstack --targets list.csv --order free --out list.xlsx",
            "",
            "Exit codes: 0 all targets on the card, 1 some left out or not read, 2 bad input, 130 stopped."})
final class CardCommand implements Callable<Integer> {
    @Mixin
    private FileOption file;

    @Mixin
    private OutOptions out;

    @Mixin
    private ListOptions list;

    @Mixin
    private WayOptions ways;

    @Mixin
    private AxisOptions axis;

    @Mixin
    private DateOption date;

    @Mixin
    private AnswerOptions answers;

    @Override
    public Integer call() throws BadInputException, StoppedException {
        LoadedStack stack = file.load();
        OutFile to = out.needed(CardFormat.endings());
        AxisAnalysis analysis = axis.analysis(stack, ways.approach());
        StopList stops = list.stops(analysis);
        CardRequest request = new CardRequest(stack.positioner(), analysis, stops.stops(), order(), ways.worn(),
                list.memoryBytes(), date.or(DrawingRequest.issued(stack.positioner()).orElse(LocalDate.now())));
        SettingCard card = card(CardMaker.make(request, stack.planner(analysis), answers.progress()));
        byte[] bytes = CardFormat.of(to.ending()).bytes(card);
        to.write(bytes);
        long leftOut = card.entries().stream().filter(entry -> entry.way().isEmpty()).count();
        tell(card, stops, leftOut, to, bytes.length);
        return leftOut == 0 && stops.bad() == 0 ? ExitCode.YES : ExitCode.NO;
    }

    private StopOrder order() throws BadInputException {
        StopOrder order = list.order();
        if (order == StopOrder.EACH_FROM_START) {
            throw new BadInputException("--order: a card has the steps from home for every target anyway; write given, free or "
                    + "one-by-one.");
        }
        return order;
    }

    private static SettingCard card(CardAnswer answer) throws BadInputException, StoppedException {
        if (answer instanceof CardAnswer.Refused refused) {
            throw new BadInputException(refused.sentence());
        }
        if (answer instanceof CardAnswer.Made made) {
            return made.card();
        }
        throw new StoppedException();
    }

    private void tell(SettingCard card, StopList stops, long leftOut, OutFile to, int bytes) {
        if (answers.inJson()) {
            answers.out().println(Json.text(json -> {
                json.beginObject().name("written").value(to.path().toString()).name("format").value(to.ending());
                json.name("date").value(card.head().date().toString()).name("targets").value(card.entries().size());
                json.name("leftOut").value(leftOut).name("bytes").value(bytes);
                Json.strings(json, "unread", stops.unread());
                json.endObject();
            }));
            return;
        }
        int targets = card.entries().size();
        answers.out().println("Written: " + to.path() + ", " + targets + (targets == 1 ? " target" : " targets")
                + (leftOut == 0 ? "" : ", " + leftOut + " of them left out; the card says why") + ", " + bytes + " bytes");
        card.entries().stream().filter(entry -> entry.way().isEmpty()).forEach(entry -> answers.out().println("Left out: "
                + (entry.name() == null || entry.name().isBlank() ? "" : "“" + entry.name() + "”: ")
                + entry.whyNot()));
        stops.unread().forEach(answers.out()::println);
    }
}
