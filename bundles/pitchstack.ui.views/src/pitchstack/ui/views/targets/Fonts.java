// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.targets;

import org.eclipse.jface.resource.FontDescriptor;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.jface.resource.LocalResourceManager;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.FontData;
import org.eclipse.swt.widgets.Control;

/** The fonts of the answer, derived from the font of the dialogs so that they follow the system's size. */
public final class Fonts {
    /** Steps are read from the machine, at arm's length and more. */
    private static final double LARGE = 1.2;

    private final Font bold;
    private final Font large;

    /** @param owner the control with which the fonts are disposed of */
    public Fonts(Control owner) {
        LocalResourceManager resources = new LocalResourceManager(JFaceResources.getResources(), owner);
        FontData[] normal = owner.getFont().getFontData();
        int height = (int) Math.round(normal[0].getHeight() * LARGE);
        bold = resources.create(FontDescriptor.createFrom(normal).setStyle(SWT.BOLD));
        large = resources.create(FontDescriptor.createFrom(normal).setHeight(height));
    }

    /** In bold. */
    public Font bold() {
        return bold;
    }

    /** Larger. */
    public Font large() {
        return large;
    }
}
