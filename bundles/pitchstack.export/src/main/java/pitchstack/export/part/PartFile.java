// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import pitchstack.analysis.part.RowReading;
import pitchstack.core.geometry.solid.Coupon;
import pitchstack.core.geometry.solid.Extent;
import pitchstack.core.geometry.solid.Remark;
import pitchstack.core.geometry.solid.RowSolid;
import pitchstack.core.geometry.solid.Solid;
import pitchstack.core.plan.Progress;

/**
 * Parts on one bed, all along x, one behind the other: what goes into a file.
 *
 * @param title what the file is
 * @param plate the parts
 * @param notes what the file says of them, a sentence each
 */
public record PartFile<S extends Solid>(String title, List<Placed<S>> plate, List<String> notes) {
    private static final String CAUTION = "A printed stage is a positioning aid, never a guard and never in the load path.";

    /** Copies the lists. */
    public PartFile {
        plate = List.copyOf(plate);
        notes = List.copyOf(notes);
    }

    /**
     * The file of some rows.
     *
     * @param title of the positioner
     * @param rows at least one
     */
    public static PartFile<RowSolid> of(String title, List<RowReading.Ready> rows) {
        List<String> notes = new ArrayList<>();
        for (RowReading.Ready row : rows) {
            notes.add(row.part().name() + ": " + row.part().shape().teeth() + " teeth, "
                    + Numbers.mm(row.part().shape().pitchFm()) + " mm pitch as drawn, multiplied by "
                    + Numbers.factor(row.scale().factorX()) + " along x and " + Numbers.factor(row.scale().factorY())
                    + " along y." + (row.reference() ? " Bought: its shape is for reference only." : ""));
        }
        notes.add("x of the bed runs along the rows; print all rows of a stack in this direction.");
        notes.add(CAUTION);
        return new PartFile<>(title, Placed.behindEachOther(rows.stream().map(RowReading.Ready::solid).toList()), notes);
    }

    /** The file of the coupon to calibrate a printer with. */
    public static PartFile<Coupon> coupon() {
        return new PartFile<>("Coupon to calibrate a printer", Placed.behindEachOther(List.of(new Coupon())),
                List.of("As drawn. Measure it by its plan; the arms lie along x and y of the bed."));
    }

    /** What is worth knowing before some rows are made: every sentence once, behind the names of the rows it is about. */
    public static List<String> remarks(List<RowReading.Ready> rows) {
        Map<String, List<String>> noted = new LinkedHashMap<>();
        for (RowReading.Ready row : rows) {
            for (Remark remark : row.remarks()) {
                noted.computeIfAbsent(remark.sentence(), sentence -> new ArrayList<>()).add(row.part().name());
            }
        }
        return noted.entrySet().stream().map(one -> String.join("; ", one.getValue()) + ": " + one.getKey()).toList();
    }

    /** What is lost where it is written as STL, in one sentence. */
    public String stlCaution() {
        double x = extent().xMm();
        return String.format(Locale.ROOT, "STL has no unit, so read it as millimetres; it tells lengths up to %.0f mm apart by"
                + " %.5f mm.", x, BinaryStl.stepMm(x));
    }

    /** How far all of it reaches on the bed. */
    public Extent extent() {
        double x = plate.stream().mapToDouble(p -> p.solid().extent().xMm()).max().orElse(0);
        double z = plate.stream().mapToDouble(p -> p.solid().extent().zMm()).max().orElse(0);
        Placed<S> last = plate.get(plate.size() - 1);
        return new Extent(x, last.yMm() + last.solid().extent().yMm(), z);
    }

    /** The file as solids. */
    public byte[] threeMf() {
        return threeMf(Progress.NONE).orElseThrow();
    }

    /** The same, or nothing where it was cancelled. */
    public Optional<byte[]> threeMf(Progress progress) {
        return written(bytes -> ThreeMf.write(title, String.join(" ", notes), plate, progress, bytes));
    }

    /** The solids as STL, without the names and the notes. */
    public byte[] stl() {
        return stl(Progress.NONE).orElseThrow();
    }

    /** The same, or nothing where it was cancelled. */
    public Optional<byte[]> stl(Progress progress) {
        return written(bytes -> BinaryStl.write(plate, progress, bytes));
    }

    private interface Writer {
        boolean write(OutputStream to) throws IOException;
    }

    private static Optional<byte[]> written(Writer writer) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            return writer.write(bytes) ? Optional.of(bytes.toByteArray()) : Optional.empty();
        } catch (IOException e) {
            throw new UncheckedIOException("Memory cannot fail to be written to", e);
        }
    }

    /** Rows in any of the formats, or nothing where it was cancelled. */
    public static Optional<byte[]> bytes(PartFile<RowSolid> rows, PartFormat format, Progress progress) {
        return switch (format) {
            case THREE_MF -> rows.threeMf(progress);
            case STL -> rows.stl(progress);
            case DXF -> Optional.of(ProfileDxf.of(rows.notes(), rows.plate()).getBytes(StandardCharsets.US_ASCII));
        };
    }
}
