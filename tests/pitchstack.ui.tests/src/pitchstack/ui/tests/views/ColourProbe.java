// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import pitchstack.edit.start.ShopDefaults.Theme;
import pitchstack.ui.views.preferences.WindowColours;

/** A program that opens a display as the window does, and says the ground and the text of its lists. */
final class ColourProbe {
    private ColourProbe() {
    }

    /** @param theme the name of a theme */
    public static void main(String[] theme) {
        WindowColours.prepare(Theme.valueOf(theme[0]));
        Display display = new Display();
        for (int colour : new int[] {SWT.COLOR_LIST_BACKGROUND, SWT.COLOR_LIST_FOREGROUND}) {
            RGB rgb = display.getSystemColor(colour).getRGB();
            System.out.println(rgb.red + " " + rgb.green + " " + rgb.blue);
        }
        display.dispose();
    }
}
