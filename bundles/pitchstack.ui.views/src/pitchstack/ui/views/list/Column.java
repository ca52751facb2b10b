// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.list;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.eclipse.emf.ecore.EAttribute;
import pitchstack.model.PitchstackPackage.Literals;

/** The columns of the list, the answers beside the position so that a narrow view shows both. */
enum Column {
    NUMBER("#", true, null, "The place in the list; click to sort by it"),
    TURN("Turn", true, null, "The place among the moves; click to sort by it"),
    NAME("Name", false, Literals.TARGET__NAME, "What the target is called"),
    POSITION("Position", true, Literals.TARGET__POSITION, "Where the carriage shall stand"),
    ERROR("Error", true, null, "How far above (+) or below (−) the target the carriage comes to stand"),
    EFFORT("Effort", true, null, "What the move to it costs"),
    REACHED("Reached", true, null, "Where the carriage comes to stand"),
    WORN("Worn teeth", false, null, "The stages that stand on worn teeth there"),
    SETTING("Setting, or why not", false, null,
            "The index of each stage; or why the target is not reached, and the nearest positions that can be set"),
    TOLERANCE("Tolerance", true, Literals.TARGET__TOLERANCE,
            "The largest error that counts as reached; empty for that of the axis"),
    NOTE("Note", false, Literals.TARGET__NOTE, "Anything worth knowing");

    private final String title;
    private final boolean number;
    private final EAttribute feature;
    private final String tooltip;

    Column(String title, boolean number, EAttribute feature, String tooltip) {
        this.title = title;
        this.number = number;
        this.feature = feature;
        this.tooltip = tooltip;
    }

    String title() {
        return title;
    }

    /** Whether its texts are numbers, which stand on the right. */
    boolean isNumber() {
        return number;
    }

    String tooltip() {
        return tooltip;
    }

    /** The fact of the target that is typed in it; empty for what follows from others. */
    Optional<EAttribute> feature() {
        return Optional.ofNullable(feature);
    }

    /** Whether it shows an answer, which is out of date while it is planned again. */
    boolean isAnswer() {
        return feature == null && this != NUMBER;
    }

    /** Those that can be typed in, from left to right. */
    static List<Column> typed() {
        return Arrays.stream(values()).filter(column -> column.feature != null).toList();
    }
}
