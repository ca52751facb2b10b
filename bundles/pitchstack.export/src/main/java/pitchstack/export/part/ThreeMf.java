// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import pitchstack.core.geometry.solid.Solid;
import pitchstack.core.plan.Progress;
import pitchstack.export.XmlText;

/**
 * Parts as 3MF (core specification 1.4.0, 3MF Consortium): a ZIP of the Open Packaging Conventions with one model part, in
 * millimetres. A part is an object with its name, put in its place by an item of the build.
 */
public final class ThreeMf {
    /**
     * A date of today would make every file another. Of the first month that a ZIP can date, the first instant stands for
     * older dates and would be written with the time zone.
     */
    private static final LocalDateTime NO_DATE = LocalDateTime.of(1980, 1, 2, 0, 0);
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String MODEL_PART = "3D/3dmodel.model";
    private static final String TYPES = HEAD
            + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">\n"
            + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>\n"
            + "<Default Extension=\"model\" ContentType=\"application/vnd.ms-package.3dmanufacturing-3dmodel+xml\"/>\n"
            + "</Types>\n";
    private static final String RELATIONSHIPS = HEAD
            + "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">\n"
            + "<Relationship Id=\"rel0\" Target=\"/" + MODEL_PART + "\""
            + " Type=\"http://schemas.microsoft.com/3dmanufacturing/2013/01/3dmodel\"/>\n"
            + "</Relationships>\n";

    private ThreeMf() {
    }

    /**
     * Writes a file.
     *
     * @param title what the file is
     * @param description what is worth knowing of it
     * @param plate the parts, at least one
     * @param progress is told how far it is
     * @param to where it goes; it stays open
     * @return whether it is whole; it is not where it was cancelled
     * @throws IOException if it cannot be written there
     */
    public static boolean write(String title, String description, List<? extends Placed<?>> plate, Progress progress,
            OutputStream to) throws IOException {
        ZipOutputStream zip = new ZipOutputStream(to, StandardCharsets.UTF_8);
        entry(zip, "[Content_Types].xml", TYPES);
        entry(zip, "_rels/.rels", RELATIONSHIPS);
        begin(zip, MODEL_PART);
        Chunks model = new Chunks(zip);
        model.add(HEAD).add("<model unit=\"millimeter\" xml:lang=\"en-US\""
                + " xmlns=\"http://schemas.microsoft.com/3dmanufacturing/core/2015/02\">\n");
        metadata(model, "Title", title);
        metadata(model, "Description", description);
        metadata(model, "Application", "Pitchstack");
        model.add("<resources>\n");
        Passes passes = new Passes(plate.size(), progress);
        for (int i = 0; i < plate.size(); i++) {
            if (!object(model, i + 1, plate.get(i).solid(), passes)) {
                return false;
            }
        }
        model.add("</resources>\n<build>\n");
        for (int i = 0; i < plate.size(); i++) {
            model.add("<item objectid=\"" + (i + 1) + "\" transform=\"1 0 0 0 1 0 0 0 1 0 ")
                    .add(plate.get(i).yMm()).add(" 0\"/>\n");
        }
        model.add("</build>\n</model>\n").end();
        zip.closeEntry();
        zip.finish();
        return true;
    }

    private static void entry(ZipOutputStream zip, String name, String text) throws IOException {
        begin(zip, name);
        zip.write(text.getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static void begin(ZipOutputStream zip, String name) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_DATE);
        zip.putNextEntry(entry);
    }

    private static void metadata(Chunks model, String name, String text) throws IOException {
        model.add("<metadata name=\"" + name + "\">").add(XmlText.of(text)).add("</metadata>\n");
    }

    /** Whether it is whole. */
    private static boolean object(Chunks model, int id, Solid solid, Passes passes) throws IOException {
        model.add("<object id=\"" + id + "\" type=\"model\" name=\"").add(XmlText.of(solid.name())).add("\">\n<mesh>\n");
        model.add("<vertices>\n");
        solid.send(new Corners(model, passes));
        model.add("</vertices>\n<triangles>\n");
        if (!passes.next()) {
            return false;
        }
        solid.send(new Triangles(model, passes));
        model.add("</triangles>\n</mesh>\n</object>\n").check();
        return passes.next();
    }
}
