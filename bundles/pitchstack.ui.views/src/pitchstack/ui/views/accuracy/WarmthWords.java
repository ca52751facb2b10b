// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.accuracy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import pitchstack.analysis.accuracy.JointReader;
import pitchstack.analysis.accuracy.Si;
import pitchstack.core.accuracy.material.Expansion;
import pitchstack.core.accuracy.material.Material;
import pitchstack.core.accuracy.thermal.Growth;
import pitchstack.core.accuracy.thermal.Temperature;
import pitchstack.core.accuracy.total.AxisAccuracy;
import pitchstack.core.accuracy.total.CountedFace;
import pitchstack.core.accuracy.total.GrowthChain;
import pitchstack.core.accuracy.total.StageAccuracy;
import pitchstack.export.plot.Figures;
import pitchstack.export.plot.Plot;
import pitchstack.export.plot.WarmthPlot;

/**
 * What is said of warmth and moisture where the stages stand.
 *
 * @param looked the axis
 */
record WarmthWords(Looked looked) {
    private static final int PLOT_POINTS = 30;
    private static final String LAW = "A length L at 20 °C, the reference temperature of ISO 1, is L·[1 + α·(T − 20"
            + " °C)] at T. The stack grows by the rows slid along, each for the pitches it counts and with its own"
            + " material; the work grows against it. Half widths are 1.96 times the root of the added squares of what"
            + " is not known of the temperature and of every coefficient; rows of one material share its coefficient."
            + " All parts are taken to have one temperature: warm hands, the sun or a motor nearby make others.";

    private AxisAccuracy accuracy() {
        return looked.budget().reading().accuracy();
    }

    private Sizes sizes() {
        return looked.sizes();
    }

    private List<Growth.Part> chain(boolean withWork) {
        AxisAccuracy a = accuracy();
        return GrowthChain.of(withWork ? a : new AxisAccuracy(a.stages(), a.sharedScale(), a.fitted(), a.datumM(),
                a.temperature(), Optional.empty(), a.rotary()), looked.now());
    }

    /** The first line. */
    String today() {
        if (accuracy().rotary()) {
            return "Warmth makes no difference to an angle: a ring of one material grows alike all round.";
        }
        Temperature now = accuracy().temperature();
        Growth growth = Growth.since20(chain(false), now);
        String at = "At " + Figures.plain(now.celsius()) + " °C, where the stages stand, ";
        return growth.valueM() == 0 ? at + "warmth moves the carriage by nothing: lengths are meant at 20 °C."
                : at + "the stack holds the carriage " + moved(growth) + " than at 20 °C.";
    }

    /** Higher or lower, by how much, and how well that is known. */
    private String moved(Growth growth) {
        String known = sizes().plusMinus(TeethWords.WITHIN_95 * growth.uncertaintyM());
        return sizes().small(Math.abs(growth.valueM())) + " (" + known + ") " + (growth.valueM() > 0 ? "higher"
                : "lower");
    }

    /** What to aim at today. */
    String aim() {
        if (accuracy().rotary()) {
            return "";
        }
        Optional<Expansion> work = accuracy().work();
        if (work.isEmpty()) {
            return "The file does not say what the work is made of, so its own growth is not counted. Give the"
                    + " positioner the material of the work to see what to aim at.";
        }
        double fromDatumM = Si.of(looked.spec().position(looked.now()) - looked.spec().datum(), looked.spec().scale());
        double aimM = Growth.aimM(fromDatumM, work.get(), accuracy().temperature());
        long aim = looked.spec().datum() + Si.counts(aimM, looked.spec().scale());
        return "Work that shall be " + format(looked.spec().position(looked.now())) + " at 20 °C is "
                + sizes().small(Math.abs(aimM - fromDatumM)) + (aimM < fromDatumM ? " shorter" : " longer")
                + " now: aim at "
                + format(aim) + ". Positions in this program count the growth of stages whose expansion the file"
                + " gives.";
    }

    private String format(long count) {
        return looked.spec().scale().format(count);
    }

    /** What a season does. */
    String season(double fromC, double toC) {
        if (accuracy().rotary()) {
            return "";
        }
        Temperature to = new Temperature(toC, accuracy().temperature().uncertaintyK());
        Growth growth = Growth.between(chain(true), fromC, to);
        String against = accuracy().work().isPresent() ? " against the work" : "";
        return growth.valueM() == 0 ? "Over this season the same setting stays where it is" + against + "."
                : "From " + Figures.plain(fromC) + " to " + Figures.plain(toC) + " °C the same setting moves "
                        + moved(growth) + against + ".";
    }

    /** What moisture does, or nothing. */
    String moisture() {
        if (accuracy().rotary()) {
            return "";
        }
        return IntStream.range(0, accuracy().stages().size()).boxed().flatMap(this::swelling)
                .collect(Collectors.joining(" "));
    }

    private Stream<String> swelling(int place) {
        StageAccuracy stage = accuracy().stages().get(place);
        int index = looked.now().index(place);
        double counted = Math.abs(stage.pitchM() * new CountedFace(stage.rows()).basePitches(index));
        return JointReader.read(looked.session().positioner(), looked.session().analysis(), place).stream()
                .flatMap(teeth -> swelling(teeth.base(), counted).stream())
                .map(swelling -> "The base row of " + stage.title() + " takes up moisture: what is counted of it may"
                + " be "
                        + sizes().large(swelling.leastM()) + " to " + sizes().large(swelling.mostM())
                        + " longer when moist than when dry. Keep it dry, and measure it again.");
    }

    private static Optional<Growth.Swelling> swelling(Material material, double lengthM) {
        return lengthM > 0 ? Growth.swelling(material, lengthM) : Optional.empty();
    }

    /** Growth over the season, if the axis has any. */
    Optional<Plot> plot(double fromC, double toC) {
        if (accuracy().rotary() || !(fromC < toC)) {
            return Optional.empty();
        }
        double doubtK = accuracy().temperature().uncertaintyK();
        return Optional.of(new WarmthPlot(IntStream.rangeClosed(0, PLOT_POINTS).mapToObj(i -> {
            double celsius = fromC + (toC - fromC) * i / PLOT_POINTS;
            Growth growth = Growth.since20(chain(true), new Temperature(celsius, doubtK));
            return new WarmthPlot.Point(celsius, growth.valueM(), TeethWords.WITHIN_95 * growth.uncertaintyM());
        }).toList(), accuracy().temperature().celsius(), sizes().errors(), accuracy().work().isPresent()));
    }

    /** Where the numbers come from. */
    String sources() {
        StringBuilder words = new StringBuilder(LAW);
        BudgetWords.add(words, "What was assumed, as the file does not say.", looked.budget().reading().assumptions());
        return words.toString();
    }
}
