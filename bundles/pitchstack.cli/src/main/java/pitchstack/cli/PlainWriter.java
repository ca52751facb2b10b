// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.CharsetEncoder;

/** Writes a plain look-alike for each sign of our sentences that a character set lacks, instead of a question mark. */
final class PlainWriter extends FilterWriter {
    private static final String SIGNS = "“”‘’′″−×…µμ";
    private static final String PLAIN = "\"\"'''\"-x.uu";

    private final CharsetEncoder encoder;

    /**
     * @param out takes the text
     * @param encoder tells which signs can be written
     */
    PlainWriter(Writer out, CharsetEncoder encoder) {
        super(out);
        this.encoder = encoder;
    }

    @Override
    public void write(int c) throws IOException {
        out.write(plain((char) c));
    }

    @Override
    public void write(char[] text, int offset, int length) throws IOException {
        write(new String(text, offset, length), 0, length);
    }

    @Override
    public void write(String text, int offset, int length) throws IOException {
        StringBuilder plain = new StringBuilder(length);
        for (int i = offset; i < offset + length; i++) {
            plain.append(plain(text.charAt(i)));
        }
        out.write(plain.toString());
    }

    private char plain(char c) {
        int sign = SIGNS.indexOf(c);
        return sign < 0 || encoder.canEncode(c) ? c : PLAIN.charAt(sign);
    }
}
