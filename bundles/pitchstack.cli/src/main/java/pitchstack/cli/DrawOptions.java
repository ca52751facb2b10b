// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.export.drawing.DrawingRequest;
import pitchstack.export.drawing.Projection;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.StandardScale;

/** What a drawing is to look like. */
final class DrawOptions {
    @Option(names = "--axis", paramLabel = "NAME", description = "Only this axis. Default: all axes on one sheet.")
    private String axis;

    @Option(names = "--sheet", paramLabel = "SIZE",
            description = "A4, A3, A2 or A1. Default: the smallest on which everything has its place.")
    private String sheet;

    @Option(names = "--scale", paramLabel = "SCALE",
            description = "Scale of the side views: 1, 2 or 5 times a power of ten to 1, or 1 to it. Default: the largest that "
                    + "fits.")
    private String scale;

    @Option(names = "--projection", paramLabel = "ANGLE",
            description = "The sign in the title block: first or third. Default: third where the file is in inches.")
    private String projection;

    @Mixin
    private DateOption date;

    /**
     * The axes to draw.
     *
     * @throws BadInputException if there is no such axis, or one of them has errors
     */
    List<AxisAnalysis> axes(LoadedStack stack) throws BadInputException {
        List<AxisAnalysis> axes = axis == null ? stack.analyses() : List.of(stack.analysis(axis, Optional.empty()));
        for (AxisAnalysis one : axes) {
            stack.demandSound(one, "drawn");
        }
        return axes;
    }

    /**
     * The whole request.
     *
     * @throws BadInputException if an option cannot be read
     */
    DrawingRequest request(LoadedStack stack, List<AxisAnalysis> axes) throws BadInputException {
        DrawingRequest usual = DrawingRequest.usual(stack.positioner(), axes, LocalDate.now());
        return new DrawingRequest(usual.positioner(), usual.axes(), sheet(), scale(), projection(usual.projection()),
                date.or(usual.date()));
    }

    private Optional<SheetSize> sheet() throws BadInputException {
        if (sheet == null) {
            return Optional.empty();
        }
        return Optional.of(Arrays.stream(SheetSize.values()).filter(size -> size.name().equalsIgnoreCase(sheet.strip()))
                .findFirst().orElseThrow(() -> new BadInputException("--sheet: “" + sheet + "” is no sheet here; write A4, A3, "
                        + "A2 or A1.")));
    }

    private Optional<StandardScale> scale() throws BadInputException {
        if (scale == null) {
            return Optional.empty();
        }
        return Optional.of(StandardScale.parse(scale).orElseThrow(() -> new BadInputException("--scale: “" + scale
                + "” is no scale of ISO 5455; write one of " + StandardScale.ALL.stream().map(StandardScale::toString)
                        .collect(Collectors.joining(", ")) + ".")));
    }

    private Projection projection(Projection usual) throws BadInputException {
        if (projection == null) {
            return usual;
        }
        return Arrays.stream(Projection.values())
                .filter(one -> one.name().toLowerCase(Locale.ROOT).equals(projection.strip().toLowerCase(Locale.ROOT)))
                .findFirst().orElseThrow(() -> new BadInputException("--projection: “" + projection
                        + "” is not known; write first or third."));
    }
}
