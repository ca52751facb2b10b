// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.drawing;

import java.util.Arrays;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;
import pitchstack.export.drawing.DrawingFormat;
import pitchstack.export.drawing.Projection;
import pitchstack.export.drawing.SheetSize;
import pitchstack.export.drawing.StandardScale;

/**
 * How a person wants drawings, kept with the settings of the window.
 *
 * @param format of the file
 * @param sheet or nothing for the smallest that fits
 * @param scale or nothing for the largest that fits
 * @param projection or nothing for the one that goes with the unit
 */
record DrawingChoices(DrawingFormat format, Optional<SheetSize> sheet, Optional<StandardScale> scale,
        Optional<Projection> projection) {
    private static final String NODE = "pitchstack.ui.views.drawing";
    private static final String FORMAT = "format";
    private static final String SHEET = "sheet";
    private static final String SCALE = "scale";
    private static final String PROJECTION = "projection";

    /** As they were last; a choice that is not known any more counts as not made. */
    static DrawingChoices last() {
        return new DrawingChoices(named(DrawingFormat.values(), FORMAT).orElse(DrawingFormat.PDF),
                named(SheetSize.values(), SHEET), StandardScale.parse(node().get(SCALE, "")),
                named(Projection.values(), PROJECTION));
    }

    private static <T extends Enum<T>> Optional<T> named(T[] values, String key) {
        return Arrays.stream(values).filter(value -> value.name().equals(node().get(key, ""))).findFirst();
    }

    /** Keeps them for the next time. */
    void keep() {
        IEclipsePreferences node = node();
        node.put(FORMAT, format.name());
        node.put(SHEET, sheet.map(Enum::name).orElse(""));
        node.put(SCALE, scale.map(StandardScale::toString).orElse(""));
        node.put(PROJECTION, projection.map(Enum::name).orElse(""));
        try {
            node.flush();
        } catch (BackingStoreException e) {
            ILog.of(DrawingChoices.class).error("The choices could not be kept; they hold until the program ends.", e);
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
