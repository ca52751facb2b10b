// SPDX-License-Identifier: EPL-2.0
package pitchstack.export.part;

import com.sun.jna.Library;
import com.sun.jna.Native;
import com.sun.jna.Pointer;
import com.sun.jna.ptr.IntByReference;
import com.sun.jna.ptr.PointerByReference;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A 3MF file as lib3mf sees it, the library of the 3MF Consortium, which publishes the specification. It is opened in strict
 * mode, in which whatever would be a warning is an error.
 *
 * @param unit as the library counts them
 * @param meshes the mesh objects, in the order of the file
 * @param transforms of the items of the build: three rows of four numbers, of which the last is the shift
 */
record Lib3mf(int unit, List<Mesh> meshes, List<float[]> transforms) {
    /** How the library counts the unit millimetre. */
    static final int MILLIMETRE = 1;

    /**
     * A mesh object.
     *
     * @param sound whether every edge belongs to two triangles that run along it in opposite directions
     * @param corners three numbers each, 32 bits wide
     * @param triangles three corners each
     */
    record Mesh(String name, boolean sound, float[] corners, int[] triangles) { }

    /** The functions of version 1.8 that are used; each answers 0 when all is well. */
    private interface Functions extends Library {
        int lib3mf_createmodel(PointerByReference model);

        int lib3mf_model_queryreader(Pointer model, String kind, PointerByReference reader);

        int lib3mf_reader_setstrictmodeactive(Pointer reader, int active);

        int lib3mf_reader_readfrombuffer(Pointer reader, byte[] file, long bytes);

        int lib3mf_reader_getwarningcount(Pointer reader, IntByReference count);

        int lib3mf_model_getunit(Pointer model, IntByReference unit);

        int lib3mf_model_getmeshobjects(Pointer model, PointerByReference iterator);

        int lib3mf_resourceiterator_movenext(Pointer iterator, IntByReference more);

        int lib3mf_resourceiterator_getcurrent(Pointer iterator, PointerByReference resource);

        int lib3mf_object_getnameutf8(Pointer object, byte[] name, int bytes, IntByReference needed);

        int lib3mf_meshobject_ismanifoldandoriented(Pointer mesh, IntByReference sound);

        int lib3mf_meshobject_getvertexcount(Pointer mesh, IntByReference count);

        int lib3mf_meshobject_gettrianglecount(Pointer mesh, IntByReference count);

        int lib3mf_meshobject_getvertices(Pointer mesh, float[] corners, int room, IntByReference count);

        int lib3mf_meshobject_gettriangleindices(Pointer mesh, int[] triangles, int room, IntByReference count);

        int lib3mf_model_getbuilditems(Pointer model, PointerByReference iterator);

        int lib3mf_builditemiterator_movenext(Pointer iterator, IntByReference more);

        int lib3mf_builditemiterator_getcurrent(Pointer iterator, PointerByReference item);

        int lib3mf_builditem_getobjecttransform(Pointer item, float[] transform);

        int lib3mf_getlasterror(Pointer instance, IntByReference code, PointerByReference sentence);

        int lib3mf_release(Pointer instance);
    }

    /** Opens a file. */
    static Lib3mf of(byte[] file) {
        Functions lib = functions();
        Pointer model = get(null, lib, lib::lib3mf_createmodel);
        Pointer reader = get(model, lib, to -> lib.lib3mf_model_queryreader(model, "3mf", to));
        well(reader, lib, lib.lib3mf_reader_setstrictmodeactive(reader, 1));
        well(reader, lib, lib.lib3mf_reader_readfrombuffer(reader, file, file.length));
        int warnings = count(reader, lib, to -> lib.lib3mf_reader_getwarningcount(reader, to));
        if (warnings != 0) {
            throw new AssertionError("lib3mf warns " + warnings + " times");
        }
        int unit = count(model, lib, to -> lib.lib3mf_model_getunit(model, to));
        Lib3mf read = new Lib3mf(unit, meshes(lib, model), transforms(lib, model));
        lib.lib3mf_release(reader);
        lib.lib3mf_release(model);
        return read;
    }

    private static Functions functions() {
        try {
            return Native.load("lib3MF.so.1", Functions.class);
        } catch (UnsatisfiedLinkError absent) {
            throw new AssertionError("The tests of parts need lib3mf, which is not installed: apt install lib3mf1", absent);
        }
    }

    private static List<Mesh> meshes(Functions lib, Pointer model) {
        List<Mesh> meshes = new ArrayList<>();
        Pointer iterator = get(model, lib, to -> lib.lib3mf_model_getmeshobjects(model, to));
        while (count(iterator, lib, to -> lib.lib3mf_resourceiterator_movenext(iterator, to)) != 0) {
            Pointer mesh = get(iterator, lib, to -> lib.lib3mf_resourceiterator_getcurrent(iterator, to));
            meshes.add(mesh(lib, mesh));
            lib.lib3mf_release(mesh);
        }
        lib.lib3mf_release(iterator);
        return meshes;
    }

    private static Mesh mesh(Functions lib, Pointer mesh) {
        byte[] name = new byte[1000];
        int bytes = count(mesh, lib, to -> lib.lib3mf_object_getnameutf8(mesh, name, name.length, to));
        boolean sound = count(mesh, lib, to -> lib.lib3mf_meshobject_ismanifoldandoriented(mesh, to)) != 0;
        int nodes = count(mesh, lib, to -> lib.lib3mf_meshobject_getvertexcount(mesh, to));
        int facets = count(mesh, lib, to -> lib.lib3mf_meshobject_gettrianglecount(mesh, to));
        float[] corners = new float[3 * nodes];
        int[] triangles = new int[3 * facets];
        count(mesh, lib, to -> lib.lib3mf_meshobject_getvertices(mesh, corners, nodes, to));
        count(mesh, lib, to -> lib.lib3mf_meshobject_gettriangleindices(mesh, triangles, facets, to));
        return new Mesh(new String(name, 0, bytes, StandardCharsets.UTF_8), sound, corners, triangles);
    }

    private static List<float[]> transforms(Functions lib, Pointer model) {
        List<float[]> transforms = new ArrayList<>();
        Pointer iterator = get(model, lib, to -> lib.lib3mf_model_getbuilditems(model, to));
        while (count(iterator, lib, to -> lib.lib3mf_builditemiterator_movenext(iterator, to)) != 0) {
            Pointer item = get(iterator, lib, to -> lib.lib3mf_builditemiterator_getcurrent(iterator, to));
            float[] transform = new float[12];
            well(item, lib, lib.lib3mf_builditem_getobjecttransform(item, transform));
            transforms.add(transform);
            lib.lib3mf_release(item);
        }
        lib.lib3mf_release(iterator);
        return transforms;
    }

    private interface Ask<T> {
        int into(T to);
    }

    private static Pointer get(Pointer of, Functions lib, Ask<PointerByReference> ask) {
        PointerByReference to = new PointerByReference();
        well(of, lib, ask.into(to));
        return to.getValue();
    }

    private static int count(Pointer of, Functions lib, Ask<IntByReference> ask) {
        IntByReference to = new IntByReference();
        well(of, lib, ask.into(to));
        return to.getValue();
    }

    private static void well(Pointer of, Functions lib, int answer) {
        if (answer != 0) {
            PointerByReference sentence = new PointerByReference();
            IntByReference code = new IntByReference();
            boolean said = of != null && lib.lib3mf_getlasterror(of, code, sentence) == 0 && sentence.getValue() != null;
            throw new AssertionError("lib3mf refuses, 0x" + Integer.toHexString(answer)
                    + (said ? ": " + sentence.getValue().getString(0) : ""));
        }
    }
}
