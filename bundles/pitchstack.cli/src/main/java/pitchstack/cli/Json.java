// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;

/** JSON text of ASCII characters only, so that no pipe or code page can spoil it. */
final class Json {
    private Json() {
    }

    /** Something that writes one value. */
    @FunctionalInterface
    interface Content {
        /** Writes the value. */
        void write(JsonWriter json) throws IOException;
    }

    /** Writes a list of strings under a name. */
    static void strings(JsonWriter json, String name, List<String> strings) throws IOException {
        json.name(name).beginArray();
        for (String string : strings) {
            json.value(string);
        }
        json.endArray();
    }

    /** One value on one line. */
    static String text(Content content) {
        StringWriter text = new StringWriter();
        try (JsonWriter json = new JsonWriter(text)) {
            content.write(json);
        } catch (IOException e) {
            throw new UncheckedIOException("A string cannot fail to be written to", e);
        }
        return ascii(text.toString());
    }

    /** Characters beyond ASCII stand only inside strings, where JSON lets any be written by its number. */
    private static String ascii(String json) {
        StringBuilder ascii = new StringBuilder(json.length());
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            if (c < 127) {
                ascii.append(c);
            } else {
                ascii.append(String.format("\\u%04x", (int) c));
            }
        }
        return ascii.toString();
    }
}
