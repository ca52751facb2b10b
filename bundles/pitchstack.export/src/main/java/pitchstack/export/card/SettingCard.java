// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import pitchstack.core.plan.PlannedSetting;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Setting;

/**
 * What stands on a setting card. Positions are counts of the axis's scale; sentences are ready to be read.
 *
 * @param head what the card is for
 * @param axis the axis, with the pitches of the day
 * @param home the setting from which counting starts: every index 0, or the nearest that its rows allow
 * @param holds for what the counts hold: temperature, pitch corrections, approach
 * @param cautions to read before the first setting
 * @param entries one for each target, in the order in which they are to be set
 * @param pocket what counts are worth
 */
public record SettingCard(Head head, AxisSpec axis, Setting home, List<String> holds, List<String> cautions,
        List<Entry> entries, List<PocketTable> pocket) {
    /**
     * What names a card.
     *
     * @param title of the device
     * @param owner legal owner, or nothing
     * @param number identification number, or nothing
     * @param revision or nothing
     * @param date of issue
     */
    public record Head(String title, String owner, String number, String revision, LocalDate date) { }

    /**
     * A target.
     *
     * @param number its place in the list, from 1
     * @param name what people call it, or nothing
     * @param target the wanted position
     * @param tolerance the largest error that counts as reached
     * @param way how it is set; nothing where it is left out
     * @param whyNot why it is left out; nothing where it is not
     */
    public record Entry(int number, String name, long target, long tolerance, Optional<Way> way, String whyNot) { }

    /**
     * How a target is set.
     *
     * @param fromPrevious the move from the entry set before, for the first from home
     * @param fromHome the move from home to the same setting; nothing where limits let none lead there
     */
    public record Way(PlannedSetting fromPrevious, Optional<PlannedSetting> fromHome) { }

    /** Copies the lists. */
    public SettingCard {
        holds = List.copyOf(holds);
        cautions = List.copyOf(cautions);
        entries = List.copyOf(entries);
        pocket = List.copyOf(pocket);
    }

    /** The name of a stage, or its number from 1 where it has none. */
    public String stage(int stage) {
        String name = axis.stages().get(stage).name();
        return name.isBlank() ? "Stage " + (stage + 1) : name;
    }

    /** The names of all stages, lowest first. */
    public List<String> stages() {
        return IntStream.range(0, axis.stages().size()).mapToObj(this::stage).toList();
    }
}
