// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.dxf;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * Reads DXF of Release 12 by the rules of its grammar (pairs, sections, tables, polylines that end with SEQEND), knowing
 * nothing of the writer.
 */
public final class ReadDxf {
    /** One pair of code and value. */
    public record Pair(int code, String value) { }

    /** An entity or a corner with its pairs. */
    public record Entity(String kind, List<Pair> pairs) {
        /** The first value of a code. */
        public String text(int code) {
            return pairs.stream().filter(pair -> pair.code() == code).map(Pair::value).findFirst().orElseThrow(
                    () -> new IllegalStateException(kind + " has no " + code));
        }

        /** The first value of a code as a number, 0 where there is none. */
        public double number(int code) {
            return pairs.stream().filter(pair -> pair.code() == code).map(Pair::value).mapToDouble(Double::parseDouble)
                    .findFirst().orElse(0);
        }
    }

    /** A polyline. */
    public record Polyline(String layer, boolean closed, List<Vertex> vertices) { }

    private final List<Pair> pairs = new ArrayList<>();

    /** Reads a file. */
    public ReadDxf(String text) {
        String[] lines = text.split("\r\n", -1);
        if (!lines[lines.length - 1].isEmpty() || lines.length % 2 == 0) {
            throw new IllegalArgumentException("The file does not end with a whole pair");
        }
        for (int i = 0; i + 1 < lines.length; i += 2) {
            pairs.add(new Pair(Integer.parseInt(lines[i]), lines[i + 1]));
        }
    }

    /** All comments, in order. */
    public List<String> comments() {
        return pairs.stream().filter(pair -> pair.code() == 999).map(Pair::value).toList();
    }

    /** Names of the sections, in order. */
    public List<String> sections() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i++) {
            if (pairs.get(i).equals(new Pair(0, "SECTION"))) {
                names.add(pairs.get(i + 1).value());
            }
        }
        return names;
    }

    /** All pairs of a section, without its begin and end. */
    public List<Pair> section(String name) {
        int begin = 0;
        while (!(pairs.get(begin).equals(new Pair(0, "SECTION")) && pairs.get(begin + 1).equals(new Pair(2, name)))) {
            begin++;
        }
        int end = begin;
        while (!pairs.get(end).equals(new Pair(0, "ENDSEC"))) {
            end++;
        }
        return pairs.subList(begin + 2, end);
    }

    /** Whatever begins with code 0 in a section. */
    public List<Entity> entities(String section) {
        List<Entity> entities = new ArrayList<>();
        for (Pair pair : section(section)) {
            if (pair.code() == 0) {
                entities.add(new Entity(pair.value(), new ArrayList<>()));
            } else {
                entities.get(entities.size() - 1).pairs().add(pair);
            }
        }
        return entities;
    }

    /** The polylines of a drawing. */
    public List<Polyline> polylines() {
        List<Polyline> found = new ArrayList<>();
        List<Vertex> open = null;
        for (Entity entity : entities("ENTITIES")) {
            switch (entity.kind()) {
                case "POLYLINE" -> {
                    open = new ArrayList<>();
                    found.add(new Polyline(entity.text(8), ((int) entity.number(70) & 1) == 1, open));
                }
                case "VERTEX" -> open.add(new Vertex(entity.number(10), entity.number(20), entity.number(42)));
                case "SEQEND" -> open = null;
                default -> {
                    if (open != null) {
                        throw new IllegalStateException(entity.kind() + " within a polyline");
                    }
                }
            }
        }
        return found;
    }

    /** The last pair. */
    public Pair last() {
        return pairs.get(pairs.size() - 1);
    }

    /** Codes used in the file. */
    public Stream<Integer> codes() {
        return pairs.stream().map(Pair::code).distinct();
    }
}
