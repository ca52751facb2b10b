// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit.start;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.function.Supplier;
import pitchstack.core.check.ToothTooSmall;
import pitchstack.core.units.LengthUnit;
import pitchstack.core.units.LinearScale;
import pitchstack.core.units.Pitch;
import pitchstack.core.units.QuantityException;
import pitchstack.core.units.RotaryScale;
import pitchstack.core.units.Scale;
import pitchstack.edit.start.StackWish.Field;
import pitchstack.model.DisplayUnit;

/** A wish in counts, or one sentence for each field that cannot be so. */
public final class WishReading {
    private static final double FEMTOMETRES_IN_METRE = 1e15;
    private static final long LONGEST_MM = 50_000;
    private static final long WIDEST_LINE_UM = 5_000;
    private static final int MOST_RING_TEETH = 20_000;

    private final StackWish wish;
    private final Scale scale;
    private final Map<Field, String> complaints = new EnumMap<>(Field.class);
    private final OptionalLong rack;
    private final OptionalLong travel;
    private final OptionalLong step;
    private final OptionalLong line;

    /** Reads a wish. */
    public WishReading(StackWish wish) {
        this.wish = wish;
        this.scale = scale(wish);
        this.line = read(Field.LINE_WIDTH, this::readLine);
        this.travel = read(Field.TRAVEL, this::readTravel);
        this.step = read(Field.STEP, this::readStep);
        this.rack = wish.rack().isBlank() ? OptionalLong.empty() : read(Field.RACK, this::readRack);
    }

    /** One sentence for each field that must be changed, in the order in which they are asked for; empty if all is well. */
    public Map<Field, String> complaints() {
        return complaints;
    }

    /** The scale of the counts; an axis with printed rings of other numbers of teeth has another. */
    public Scale scale() {
        return scale;
    }

    /** The travel. */
    public long travel() {
        return travel.orElseThrow();
    }

    /** Whether the carriage turns all the way round. */
    public boolean isWholeTurn() {
        return scale.turn() > 0 && travel() == scale.turn();
    }

    /** The finest step. */
    public long step() {
        return step.orElseThrow();
    }

    /** The pitch of the rack at hand, if there is one. */
    public OptionalLong rack() {
        return rack;
    }

    /** The smallest pitch that can be printed; 0 on a rotary axis, where it depends on the radius. */
    public long smallestPrinted() {
        return scale.turn() > 0 ? 0 : (long) Math.ceil(
                ToothTooSmall.smallestPitchM(line.orElseThrow() / FEMTOMETRES_IN_METRE) * FEMTOMETRES_IN_METRE);
    }

    private static Scale scale(StackWish wish) {
        if (!wish.isRotary()) {
            return new LinearScale(wish.unit() == DisplayUnit.INCH ? LengthUnit.INCH : LengthUnit.MM);
        }
        try {
            long teeth = wish.rack().isBlank() ? 1 : Pitch.parse(wish.rack()).teethPerTurn();
            return RotaryScale.dividing(List.of(Math.max(1, teeth)));
        } catch (QuantityException unreadable) {
            // The field itself says so; the others can still be read.
            return RotaryScale.dividing(List.of(1L));
        }
    }

    private OptionalLong read(Field field, Supplier<Long> reading) {
        try {
            return OptionalLong.of(reading.get());
        } catch (QuantityException e) {
            complaints.put(field, e.getMessage());
            return OptionalLong.empty();
        }
    }

    private long readLine() {
        LinearScale um = new LinearScale(LengthUnit.MM);
        long width = um.parse(required(wish.lineWidth(), "The line width is missing; most printers lay lines of 0.4 mm."));
        long widest = WIDEST_LINE_UM * LengthUnit.UM.femtometres();
        require(width > 0 && width <= widest,
                "A line of " + wish.lineWidth().strip() + " is not printed; it must be above 0 and at most 5 mm.");
        return width;
    }

    private long readTravel() {
        long typed = scale.parse(required(wish.travel(), "The travel is missing; type how far the carriage shall go, like "
                + (wish.isRotary() ? "360° or 90°." : wish.unit() == DisplayUnit.INCH ? "48 in." : "600 mm.")));
        require(typed > 0, "A travel of " + wish.travel().strip() + " leads nowhere; it must be above 0.");
        if (wish.isRotary()) {
            require(typed <= scale.turn(), "A travel of " + wish.travel().strip() + " is more than a turn; type 360° for a"
                    + " table that turns all the way round.");
        } else {
            require(typed <= LONGEST_MM * LengthUnit.MM.femtometres(),
                    "A travel of " + wish.travel().strip() + " is more than the 50 m that can be laid out here.");
        }
        return typed;
    }

    private long readStep() {
        long typed = scale.parse(required(wish.step(), "The finest step is missing; type the spacing you need, like "
                + (wish.isRotary() ? "0.1° or 30 arcsec." : wish.unit() == DisplayUnit.INCH ? "0.010 in." : "0.1 mm.")));
        require(typed > 0, "A step of " + wish.step().strip() + " is none; it must be above 0.");
        require(travel.isEmpty() || typed < travel.getAsLong(), "A step of " + wish.step().strip()
                + " is as long as the whole travel; it must be shorter.");
        return typed;
    }

    private long readRack() {
        long typed = Pitch.parse(wish.rack()).units(scale);
        require(typed > 0, "A pitch of " + wish.rack().strip() + " is none; it must be above 0.");
        require(travel.isEmpty() || typed < travel.getAsLong(), "A pitch of " + scale.format(typed)
                + " is as long as the whole travel; give a finer rack or a longer travel.");
        require(!wish.isRotary() || scale.turn() / typed <= MOST_RING_TEETH,
                "A ring of more than " + MOST_RING_TEETH + " teeth is not made; give one of fewer.");
        return typed;
    }

    private static String required(String typed, String sentence) {
        require(!typed.isBlank(), sentence);
        return typed;
    }

    private static void require(boolean holds, String sentence) {
        if (!holds) {
            throw new QuantityException(sentence);
        }
    }
}
