// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.card;

/** Stacks made up for the tests of cards. */
final class Texts {
    /** 5 a + 4.9 b mm with a in {0, 1} and b in {−1, 0, 1}; tooth 1 of the rack is worn, so that a = 1 stands on it. */
    static final String SMALL = """
            <?xml version="1.0" encoding="UTF-8"?>
            <ps:Positioner xmi:version="2.0" xmlns:xmi="http://www.omg.org/XMI" xmlns:ps="pitchstack:model/1" unit="mm">
            <axes name="Slide" tolerance="0">
            <stages name="Rack" pitch="5 mm" start="0" minimumEngaged="1">
            <baseRow teeth="2"><worn first="1" last="1"/></baseRow><riderRow teeth="1"/></stages>
            <stages name="Fine" pitch="4.9 mm" start="1" minimumEngaged="1">
            <baseRow teeth="3"/><riderRow teeth="1"/></stages>
            <targets name="Only over worn teeth" position="0.1 mm"/>
            <targets position="-4.9 mm"/>
            </axes>
            </ps:Positioner>
            """;

    private Texts() {
    }

    /** A stack of so many stages whose names and targets' names are as long as people can make them, counts of five digits. */
    static String large(int stages) {
        StringBuilder text = new StringBuilder(SMALL.substring(0, SMALL.indexOf("<stages")));
        String name = "A name that goes on and on, Überlänge, ".repeat(4);
        for (int j = 0; j < stages; j++) {
            text.append("<stages name=\"").append(name).append(j).append("\" pitch=\"").append(5 + j * 0.001)
                    .append(" mm\" index=\"0\" start=\"0\" minimumEngaged=\"1\"><baseRow teeth=\"").append(j == 0 ? 20_000 : 4)
                    .append("\"/><riderRow teeth=\"2\"/></stages>");
        }
        for (int i = 0; i < 12; i++) {
            text.append("<targets name=\"").append(i % 2 == 0 ? name : "").append("\" position=\"").append(8_000 * i)
                    .append(" mm\" tolerance=\"0.1 mm\"/>");
        }
        return text.append("</axes></ps:Positioner>").toString();
    }
}
