// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.check;

import java.util.Optional;
import pitchstack.core.stack.Source;
import pitchstack.core.stack.StageSpec;

/** Neighbouring stages make fine steps by the difference of their pitches. */
public final class EqualPitches implements StageCheck {
    @Override
    public Optional<Finding> at(Subject subject, StageSpec stage, int j) {
        if (j == 0) {
            return Optional.empty();
        }
        StageSpec below = subject.axis().stages().get(j - 1);
        boolean printed = stage.source() == Source.PRINTED || below.source() == Source.PRINTED;
        if (!printed || stage.nominalPitch() != below.nominalPitch()) {
            return Optional.empty();
        }
        String pitch = subject.axis().scale().format(stage.nominalPitch());
        return Optional.of(new Finding("equal-pitches", Severity.WARNING, Place.stage(j), pitch, "not " + pitch,
                "Stages " + below.title(j - 1) + " and " + stage.title(j) + " both have a pitch of " + pitch
                        + ", so one forward and one back moves nothing; print one of them a little finer."));
    }
}
