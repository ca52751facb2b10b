// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.core.check.Finding;
import pitchstack.core.coverage.Outcome;
import pitchstack.core.design.Proof;
import pitchstack.core.design.StackLayout;
import pitchstack.core.plan.Progress;
import pitchstack.core.stack.RowPair;
import pitchstack.core.units.Scale;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Row;
import pitchstack.model.Stage;
import pitchstack.model.StageSource;

/**
 * A positioner made from a wish, checked as any file is, and what it really reaches.
 *
 * @param positioner the device, in no document yet
 * @param findings what the checks say of it
 * @param proof what its axis reaches
 */
public record StartingStack(Positioner positioner, List<Finding> findings, Proof proof) {
    private static final PitchstackFactory FACTORY = PitchstackFactory.eINSTANCE;
    private static final List<List<String>> FINE_NAMES = List.of(List.of(), List.of("Fine stage"),
            List.of("Middle stage", "Fine stage"), List.of("Coarse stage", "Middle stage", "Fine stage"));

    /** What comes of a wish. */
    public sealed interface Result permits Made, NotMade { }

    /**
     * A stack.
     *
     * @param stack the stack
     */
    public record Made(StartingStack stack) implements Result { }

    /**
     * None.
     *
     * @param sentence why, and what to ask for instead; empty where the work was cancelled
     */
    public record NotMade(String sentence) implements Result { }

    /** Copies the list. */
    public StartingStack {
        findings = List.copyOf(findings);
    }

    /** The axis. */
    public Axis axis() {
        return positioner.getAxes().get(0);
    }

    /**
     * Makes a stack and works out what it reaches; takes up to seconds for the finest steps.
     *
     * @param wish without complaints, see {@link WishReading}
     * @param costs of its stages
     * @param progress where to look for a cancellation
     */
    public static Result of(StackWish wish, StageCosts costs, Progress progress) {
        WishReading reading = new WishReading(wish);
        Optional<StackDraft> draft;
        try {
            draft = StackDraft.of(reading);
        } catch (ArithmeticException tooLong) {
            return new NotMade("So long a travel needs more teeth than can be counted here; give a coarser rack or a shorter"
                    + " travel.");
        }
        return draft.map(found -> proven(positioner(wish, reading, found, costs), reading, progress))
                .orElseGet(() -> tooFine(reading));
    }

    private static Result tooFine(WishReading wish) {
        Scale scale = wish.scale();
        long readable = scale.parse(scale.smallestSize());
        long finest = -Math.floorDiv(-StackDraft.finestStep(wish), readable) * readable;
        return new NotMade("A step of " + scale.formatSize(wish.step()) + " is finer than three printed stages divide one tooth"
                + " of the rack; ask for " + scale.formatSize(finest) + " or more, or give a finer rack.");
    }

    private static Result proven(Positioner positioner, WishReading wish, Progress progress) {
        Result first = proven(positioner, progress);
        if (!(first instanceof Made made) || reachesEnd(made.stack(), wish)) {
            return first;
        }
        // Where steps do not divide the travel, the last of its positions may need a setting just beyond its end.
        made.stack().axis().setHigh(plain(wish.scale(), Math.addExact(wish.travel(), wish.step())));
        return proven(positioner, progress);
    }

    private static boolean reachesEnd(StartingStack stack, WishReading wish) {
        return wish.isWholeTurn() || stack.proof().coverage().travel() - 1 + stack.proof().step() / 2 >= wish.travel();
    }

    private static Result proven(Positioner positioner, Progress progress) {
        AxisAnalysis analysis = AxisAnalysis.of(positioner, positioner.getAxes().get(0));
        if (analysis.hasErrors()) {
            return new NotMade(analysis.findings().get(0).sentence());
        }
        Outcome<Proof> outcome = Proof.of(analysis.spec(), analysis.spec().wantedStep().orElseThrow(), progress);
        if (outcome instanceof Outcome.Done<Proof> done) {
            return new Made(new StartingStack(positioner, analysis.findings(), done.value()));
        }
        return new NotMade(outcome instanceof Outcome.Refused<Proof> refused ? refused.why() : "");
    }

    private static Positioner positioner(StackWish wish, WishReading reading, StackDraft draft, StageCosts costs) {
        Positioner positioner = FACTORY.createPositioner();
        positioner.setTitle("New positioner");
        positioner.setUnit(wish.unit());
        positioner.setLineWidth(text(wish.lineWidth(), "mm"));
        positioner.setTitleBlock(FACTORY.createTitleBlock());
        Axis axis = FACTORY.createAxis();
        axis.setName(wish.isRotary() ? "Table" : "Carriage");
        axis.setKind(wish.kind());
        String unit = wish.isRotary() ? "°" : wish.unit().getLiteral();
        axis.setDatum("0 " + unit);
        if (!reading.isWholeTurn()) {
            axis.setLow("0 " + unit);
            axis.setHigh(text(wish.travel(), unit));
        }
        axis.setWantedStep(text(wish.step(), unit));
        axis.setTolerance(plain(reading.scale(), reading.step() / 2));
        positioner.getAxes().add(axis);
        addStages(axis, wish, reading.scale(), draft, costs);
        return positioner;
    }

    private static void addStages(Axis axis, StackWish wish, Scale scale, StackDraft draft, StageCosts costs) {
        List<Long> pitches = draft.layout().pitches();
        List<String> names = FINE_NAMES.get(pitches.size() - 1);
        for (int j = 0; j < pitches.size(); j++) {
            Stage stage = stage(draft.layout().rows().get(j));
            boolean lowest = j == 0;
            stage.setName(lowest ? wish.isRotary() ? "Ring" : "Rack" : names.get(j - 1));
            stage.setSource(lowest && draft.rackAtHand() ? StageSource.BOUGHT : StageSource.PRINTED);
            stage.setPitch(lowest && draft.rackAtHand() ? wish.rack().strip() : pitch(scale, pitches.get(j)));
            costs.giveTo(stage);
            axis.getStages().add(stage);
        }
    }

    private static Stage stage(RowPair rows) {
        Stage stage = FACTORY.createStage();
        stage.setStart(rows.start());
        stage.setMinimumEngaged(rows.minimumEngaged());
        stage.setBaseRow(row(rows.base().teeth()));
        stage.setRiderRow(row(rows.rider().teeth()));
        return stage;
    }

    private static Row row(int teeth) {
        Row row = FACTORY.createRow();
        row.setTeeth(teeth);
        return row;
    }

    private static String pitch(Scale scale, long pitch) {
        return scale.turn() > 0 && StackLayout.isRing(scale.turn(), pitch) ? scale.turn() / pitch + " per turn"
                : scale.turn() > 0 ? scale.format(pitch) : plain(scale, pitch);
    }

    /** A length as it is read, without the zeros behind the point. */
    private static String plain(Scale scale, long count) {
        String text = scale.formatSize(count);
        int blank = text.indexOf(' ');
        return scale.turn() > 0 || blank < 0 ? text
                : new BigDecimal(text.substring(0, blank)).stripTrailingZeros().toPlainString() + text.substring(blank);
    }

    /** What was typed, with the unit that was meant; a file says it always. */
    private static String text(String typed, String unit) {
        String text = typed.strip();
        return Character.isDigit(text.charAt(text.length() - 1)) || text.endsWith(".") ? text + " " + unit : text;
    }
}
