// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.guide;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A page of the guide as plain text with marks on it. Offsets count characters from 0; ends are not included.
 *
 * @param text the text; the place of a picture is one {@link #PICTURE} character
 * @param spans what stands out in the text
 * @param lines where the text is set in, in order
 * @param tables where lines are rows of a table, with tabs between the cells
 * @param anchors offset of each heading by its name in links
 */
record GuideText(String text, List<Span> spans, List<Indent> lines, List<Table> tables, Map<String, Integer> anchors) {
    /** Stands in the text for a picture (object replacement character, Unicode 15.1). */
    static final char PICTURE = '\uFFFC';

    /** How a part of the text is shown. */
    enum Look { TITLE, HEADING, STRONG, EMPHASIS, CODE, LINK, PICTURE }

    /**
     * A part of the text that stands out.
     *
     * @param look how it is shown
     * @param start offset of its first character
     * @param end offset after its last character
     * @param goal where a link leads, or which file a picture is; otherwise empty
     */
    record Span(Look look, int start, int end, String goal) { }

    /**
     * A part of the text that is set in.
     *
     * @param start offset of its first character
     * @param end offset after its last character
     * @param depth how deep, from 1
     */
    record Indent(int start, int end, int depth) { }

    /**
     * A part of the text that is a table.
     *
     * @param start offset of its first character
     * @param end offset after its last character
     */
    record Table(int start, int end) { }

    /** The link at an offset. */
    Optional<Span> link(int offset) {
        return spans.stream().filter(s -> s.look() == Look.LINK && s.start() <= offset && offset < s.end()).findFirst();
    }

    /** The first link after an offset, or the first of all where none follows. */
    Optional<Span> linkAfter(int offset) {
        List<Span> links = spans.stream().filter(s -> s.look() == Look.LINK).toList();
        return links.stream().filter(s -> s.start() > offset).findFirst().or(() -> links.stream().findFirst());
    }
}
