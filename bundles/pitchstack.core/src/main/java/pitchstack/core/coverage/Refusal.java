// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Optional;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.units.Scale;

/**
 * Why something is refused, in one sentence with the way out.
 *
 * @param axis the axis asked about
 */
record Refusal(AxisSpec axis) {
    String settings() {
        return "The stages can be set in more ways than can be counted; shorten a row.";
    }

    /** That the stages other than the coarse one, if there is one, give too many offsets. */
    String offsets(Optional<Integer> coarse, int most) {
        String others = coarse.map(j -> axis.stages().get(j).name()).filter(name -> !name.isBlank())
                .map(name -> "The stages other than “" + name + "”").orElse("The fine stages");
        return others + " give more than " + most + " different offsets, too many to map; shorten a row, or limit the"
                + " net shift of two stages.";
    }

    String tolerance(long tolerance, int most) {
        return "A tolerance of " + size(tolerance) + " leaves more than " + most + " separate stretches, too many to"
                + " list; ask for a larger tolerance.";
    }

    /** That a step is too fine; the smallest possible one is rounded up to what people read. */
    String step(long step, long smallest) {
        Scale scale = axis.scale();
        long readable = scale.parse(scale.smallestSize());
        return "A step of " + size(step) + " is too fine to map the whole travel; take "
                + scale.formatSize(-Math.floorDiv(-smallest, readable) * readable) + " or more.";
    }

    String effort() {
        return "A move of this axis can cost more than 12 days, too much to map; lower what a tooth or a release costs.";
    }

    String spacing() {
        return "The positions of this axis lie too close to look for the widest spacing; shorten a row.";
    }

    /** A size; one that would be rounded away is not called nothing. */
    private String size(long size) {
        Scale scale = axis.scale();
        String text = scale.formatSize(size);
        return size != 0 && text.equals(scale.formatSize(0)) ? "less than " + scale.smallestSize() : text;
    }
}
