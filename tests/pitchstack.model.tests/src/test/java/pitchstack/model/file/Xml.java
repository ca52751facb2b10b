// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

/** Texts of stack files for tests. */
final class Xml {
    static final String DECLARATION = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    static final String START = "<ps:Positioner xmi:version=\"2.0\" xmlns:xmi=\"http://www.omg.org/XMI\""
            + " xmlns:ps=\"pitchstack:model/1\">";
    static final String END = "</ps:Positioner>";

    private Xml() {
    }

    /** A whole file around the content of its Positioner. */
    static String around(String content) {
        return DECLARATION + START + "\n" + content + "\n" + END + "\n";
    }
}
