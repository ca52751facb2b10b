// SPDX-License-Identifier: EPL-2.0
package pitchstack.core.coverage;

import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.plan.PlannedSetting;

/**
 * What supposed marks change for one stop, planned by itself from the same setting both times.
 *
 * @param stop which stop of the list, counted from 0
 * @param now the move to it as the teeth are; empty where it is not reached
 * @param supposed the move to it with the marks; empty where it is not reached then
 */
public record StopChange(int stop, Optional<PlannedSetting> now, Optional<PlannedSetting> supposed) {
    /** Whether it is reached now and would not be. */
    public boolean fails() {
        return now.isPresent() && supposed.isEmpty();
    }

    /** Whether it is reached clean now and would be over worn teeth only. */
    public boolean turnsWorn() {
        return now.isPresent() && supposed.isPresent() && now.get().wornStages().isEmpty()
                && !supposed.get().wornStages().isEmpty();
    }

    /**
     * What it would cost more, in milliseconds; below 0 where a setting over worn teeth, which is taken only when no
     * clean one is left, is nearer. Empty where it is not reached both times.
     */
    public OptionalLong extraMs() {
        return now.isPresent() && supposed.isPresent()
                ? OptionalLong.of(supposed.get().effortMs() - now.get().effortMs()) : OptionalLong.empty();
    }

    /** Whether the marks matter for it at all. */
    public boolean isChanged() {
        return fails() || turnsWorn() || extraMs().orElse(0) != 0;
    }
}
