// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/** The formats of files for the coupon. */
public enum CouponFormat {
    /** For printers. */
    THREE_MF("3mf"),
    /** For programs that know nothing better. */
    STL("stl"),
    /** What to measure on it, as a table to fill in. */
    CSV("csv");

    private final String ending;

    CouponFormat(String ending) {
        this.ending = ending;
    }

    /** What the name of a file ends with, without the point. */
    public String ending() {
        return ending;
    }

    /** All endings. */
    public static List<String> endings() {
        return Arrays.stream(values()).map(CouponFormat::ending).toList();
    }

    /**
     * The format of a file.
     *
     * @param ending one of {@link #endings()}, in any case
     */
    public static CouponFormat of(String ending) {
        return values()[endings().indexOf(ending.toLowerCase(Locale.ROOT))];
    }

    /** The whole file. */
    public byte[] bytes() {
        return switch (this) {
            case THREE_MF -> PartFile.coupon().threeMf();
            case STL -> PartFile.coupon().stl();
            case CSV -> CouponPlan.csv().getBytes(StandardCharsets.UTF_8);
        };
    }
}
