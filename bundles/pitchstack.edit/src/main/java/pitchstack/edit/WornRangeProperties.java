// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import pitchstack.edit.Property.Entry;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.WearKind;
import pitchstack.model.WornRange;

/** The facts of marked teeth. Ranges do not run into each other while they are typed. */
final class WornRangeProperties {
    private static final String TEETH = "Teeth";

    private WornRangeProperties() {
    }

    static List<Property> of(WornRange range) {
        Entries entries = new Entries(range, "a worn range");
        ToothMark mark = ToothMark.of(range);
        int last = Math.max(0, mark.row().getTeeth() - 1);
        // Where one end is typed past the other, the other goes along.
        return List.of(
                checked(range, entries.integer(Literals.WORN_RANGE__FIRST, "first tooth", "Teeth of a row count from 0.",
                        TEETH, 0, last, to(range, tooth -> mark.from(tooth, Math.max(tooth, mark.last()))))),
                checked(range, entries.integer(Literals.WORN_RANGE__LAST, "last tooth",
                        "The last marked tooth, itself included.", TEETH, 0, last,
                        to(range, tooth -> mark.from(Math.min(tooth, mark.first()), tooth)))),
                entries.choice(Literals.WORN_RANGE__KIND, "wear", "Worn teeth are used and flagged; barred teeth are not used.",
                        TEETH, WearKind.VALUES),
                entries.text(Literals.WORN_RANGE__NOTE, "note", "What is wrong with these teeth.", TEETH));
    }

    private static IntFunction<Edit> to(WornRange range, IntFunction<ToothMark> mark) {
        return tooth -> new ChangeMark(range, mark.apply(tooth));
    }

    /** Files may hold ranges that overlap; only a further overlap is refused. */
    private static Property checked(WornRange range, Property property) {
        return new Property(property.id(), property.label(), property.tooltip(), property.group(), property.text(),
                property.choices(), Optional.of(typed -> {
                    Entry entry = property.enter(typed);
                    if (entry instanceof Entry.Accepted accepted && accepted.edit() instanceof ChangeMark change) {
                        return refusal(range, change.mark()).<Entry>map(Entry.Refused::new).orElse(entry);
                    }
                    return entry;
                }));
    }

    private static Optional<String> refusal(WornRange range, ToothMark wanted) {
        ToothMark was = ToothMark.of(range);
        List<ToothMark> others = new ArrayList<>();
        for (WornRange other : was.row().getWorn()) {
            if (other != range && !MarkRules.meet(was, ToothMark.of(other))) {
                others.add(ToothMark.of(other));
            }
        }
        return MarkRules.refusal(wanted, others);
    }
}
