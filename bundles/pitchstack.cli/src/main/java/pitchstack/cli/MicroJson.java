// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import pitchstack.core.units.Scale;

/**
 * Small sizes for other programs: numbers in micrometres, on a rotary axis in arc seconds.
 *
 * @param scale of the axis
 */
record MicroJson(Scale scale) {
    private static final double MICROMETRES_IN_METRE = 1e6;
    private static final double SECONDS_IN_RADIAN = 648_000 / Math.PI;

    /** The name of the unit. */
    String unit() {
        return scale.turn() == 0 ? "um" : "arcsec";
    }

    /** Writes a size under a name. */
    void write(JsonWriter json, String name, double si) throws IOException {
        plain(json, name, si * (scale.turn() == 0 ? MICROMETRES_IN_METRE : SECONDS_IN_RADIAN));
    }

    /** Writes a number under a name, null where it is none or infinite. */
    static void plain(JsonWriter json, String name, double number) throws IOException {
        json.name(name);
        if (Double.isFinite(number)) {
            json.value(number);
        } else {
            json.nullValue();
        }
    }
}
