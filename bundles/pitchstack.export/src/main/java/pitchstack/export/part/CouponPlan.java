// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.util.ArrayList;
import java.util.List;
import pitchstack.core.geometry.solid.Coupon;
import pitchstack.export.Decimals;

/**
 * What to measure on the coupon. The distance of two posts is the mean of what a caliper shows over them and between
 * them; several lengths tell what grows with the length from what is added to every face.
 */
public final class CouponPlan {
    /**
     * One span.
     *
     * @param direction x or y of the bed
     * @param post the other post, counted from the corner post, 0
     * @param drawnMm from a face of the corner post to the same face of the other
     */
    public record Span(String direction, int post, double drawnMm) {
        /** What a caliper shows over both posts, if the print is true. */
        public double overMm() {
            return drawnMm + Coupon.POST_MM;
        }

        /** What it shows between them. */
        public double betweenMm() {
            return drawnMm - Coupon.POST_MM;
        }
    }

    private CouponPlan() {
    }

    /** All spans, x first. */
    public static List<Span> spans() {
        List<Span> spans = new ArrayList<>();
        for (String direction : List.of("x", "y")) {
            for (int post = 1; post < Coupon.POSTS_MM.size(); post++) {
                spans.add(new Span(direction, post, Coupon.POSTS_MM.get(post)));
            }
        }
        return spans;
    }

    /** How to measure, a sentence a line. */
    public static List<String> instructions() {
        return List.of("Print the coupon with the set-up of the parts, as it lies in the file, and let it cool for a day.",
                "Measure over the outer faces of each two posts and between their inner faces, at mid height, at 20 °C.",
                "The measured span is half the sum of both. Enter it with the drawn span and its direction under the print"
                        + " set-up; the factors then go into every part printed with it.");
    }

    /** A table to fill in, in millimetres, as CSV. */
    public static String csv() {
        StringBuilder csv = new StringBuilder("direction,posts,drawn span (mm),over the posts as drawn (mm),"
                + "between the posts as drawn (mm),over the posts measured (mm),between the posts measured (mm),"
                + "measured span = half the sum (mm)\r\n");
        for (Span span : spans()) {
            csv.append(span.direction()).append(",0 to ").append(span.post()).append(',').append(mm(span.drawnMm()))
                    .append(',').append(mm(span.overMm())).append(',').append(mm(span.betweenMm())).append(",,,\r\n");
        }
        return csv.toString();
    }

    private static String mm(double length) {
        return Decimals.of(length, 3);
    }
}
