// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import pitchstack.model.file.StackFileException.Problem;

/**
 * The text of a stack file and the places in it. Lines end as XML says: at a line feed, a carriage return, or both.
 *
 * @param file where it was read, for messages
 * @param text the text, without a byte order mark
 */
record StackText(Path file, String text) {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    /** Reads a file of at most {@link StackFile#MAX_BYTES}; a longer one is refused without being read. */
    static StackText read(Path file) throws StackFileException {
        try {
            if (Files.exists(file) && !Files.isRegularFile(file)) {
                throw new StackFileException(Problem.UNREADABLE, file, "this is not a file but a folder or a device.",
                        null);
            }
            if (Files.size(file) > StackFile.MAX_BYTES) {
                throw tooLarge(file);
            }
            try (InputStream in = Files.newInputStream(file)) {
                return decode(file, in.readNBytes(StackFile.MAX_BYTES + 1));
            }
        } catch (NoSuchFileException e) {
            throw new StackFileException(Problem.UNREADABLE, file, "there is no such file.", e);
        } catch (StackFileException e) {
            throw e;
        } catch (IOException e) {
            throw new StackFileException(Problem.UNREADABLE, file, "the file cannot be read ("
                    + Reasons.of(e) + ").", e);
        }
    }

    /** The text of bytes that are, or are to become, a file. */
    static StackText decode(Path file, byte[] bytes) throws StackFileException {
        if (bytes.length > StackFile.MAX_BYTES) {
            throw tooLarge(file);
        }
        CharBuffer chars = CharBuffer.allocate(bytes.length);
        CoderResult result = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), chars, true);
        boolean marked = chars.position() > 0 && chars.get(0) == BYTE_ORDER_MARK;
        String text = chars.flip().position(marked ? 1 : 0).toString();
        StackText decoded = new StackText(file, text);
        if (result.isError()) {
            throw new StackFileException(Problem.NOT_A_STACK_FILE, file, decoded.at(text.length()),
                    "the text is not in UTF-8 from here on; a stack file is UTF-8 throughout.", null);
        }
        return decoded;
    }

    private static StackFileException tooLarge(Path file) {
        return new StackFileException(Problem.TOO_LARGE, file, "the file is larger than the "
                + StackFile.MAX_BYTES / (1 << 20) + " MB that a stack file may have.", null);
    }

    /** The place of an offset from 0 to the length of the text. */
    Place at(int offset) {
        int line = 1;
        int start = 0;
        for (int i = 0; i < offset; i++) {
            if (endsLine(i)) {
                line++;
                start = i + 1;
            }
        }
        return new Place(line, offset - start + 1);
    }

    /** The offset of a place, cut to the text. */
    int offset(Place place) {
        int line = 1;
        int i = 0;
        for (; line < place.line() && i < text.length(); i++) {
            if (endsLine(i)) {
                line++;
            }
        }
        return Math.min(i + Math.max(0, place.column() - 1), text.length());
    }

    private boolean endsLine(int i) {
        char c = text.charAt(i);
        return c == '\n' || (c == '\r' && (i + 1 == text.length() || text.charAt(i + 1) != '\n'));
    }
}
