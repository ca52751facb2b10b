// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Option;
import pitchstack.analysis.part.PartReader;
import pitchstack.analysis.part.PartSet;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.Side;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Which rows to make. */
final class PartOptions {
    @Option(names = "--stage", paramLabel = "NAME", description = "The rows of this stage: those that are printed, or both "
            + "for reference where the stage is bought.")
    private String stage;

    @Option(names = "--row", paramLabel = "base|rider", description = "Of the stage, this row alone.")
    private String row;

    @Option(names = "--set", description = "Every printed row, on one bed, all in one direction.")
    private boolean set;

    @Option(names = "--coupon", description = "A coupon to calibrate the printer with, and what to measure on it.")
    private boolean coupon;

    @Option(names = "--axis", paramLabel = "NAME", description = "The axis, where the file has several.")
    private String axis;

    /**
     * Whether the coupon is asked for.
     *
     * @throws BadInputException if not exactly one thing is asked for
     */
    boolean isCoupon() throws BadInputException {
        long asked = Stream.of(stage != null, set, coupon).filter(Boolean::booleanValue).count();
        if (asked != 1) {
            throw new BadInputException(asked == 0 ? "Say what to make: a stage with --stage NAME, all printed rows with "
                    + "--set, or a coupon with --coupon." : "--stage, --set and --coupon exclude each other; give one of them.");
        }
        if (row != null && stage == null) {
            throw new BadInputException("--row chooses a row of a stage; give the stage with --stage NAME.");
        }
        return coupon;
    }

    /**
     * The rows asked for.
     *
     * @throws BadInputException if there are none, or one of them cannot be made
     */
    List<RowReading.Ready> rows(LoadedStack stack) throws BadInputException {
        List<RowReading> rows = set ? printed(stack) : ofStage(stack);
        Optional<String> refusal = PartSet.refusal(rows);
        if (refusal.isPresent()) {
            throw new BadInputException(refusal.get());
        }
        return PartSet.ready(rows);
    }

    private List<RowReading> printed(LoadedStack stack) throws BadInputException {
        Positioner positioner = stack.positioner();
        List<RowReading> rows = PartSet.printed(positioner, axis == null ? positioner.getAxes()
                : List.of(stack.axisOrOnly(axis)));
        if (rows.isEmpty()) {
            throw new BadInputException(PartSet.NONE_PRINTED);
        }
        return rows;
    }

    private List<RowReading> ofStage(LoadedStack stack) throws BadInputException {
        Axis one = stack.axisOrOnly(axis);
        Stage found = stage(one);
        return row == null ? PartSet.of(stack.positioner(), one, found)
                : List.of(new PartReader(stack.positioner()).read(one, found, side()));
    }

    private Side side() throws BadInputException {
        return Stream.of(Side.values()).filter(side -> side.word().equals(row.toLowerCase(Locale.ROOT))).findFirst()
                .orElseThrow(() -> new BadInputException("--row: “" + row + "” is no row; write base or rider."));
    }

    private Stage stage(Axis of) throws BadInputException {
        List<Stage> exact = of.getStages().stream().filter(s -> stage.equals(s.getName())).toList();
        List<Stage> named = !exact.isEmpty() ? exact
                : of.getStages().stream().filter(s -> stage.equalsIgnoreCase(s.getName())).toList();
        if (named.size() == 1) {
            return named.get(0);
        }
        String has = of.getStages().stream().map(s -> "“" + s.getName() + "”").collect(Collectors.joining(", "));
        throw new BadInputException("--stage: axis “" + of.getName() + "” has " + (named.isEmpty() ? "no" : named.size())
                + " stage" + (named.isEmpty() ? "" : "s") + " “" + stage + "”; it has " + has + ".");
    }
}
