// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIResourceImpl;
import pitchstack.model.PitchstackPackage;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFileException.Problem;

/** Turns a positioner into the bytes of its file. */
final class StackWriter {
    /** Attributes go on a line of their own past this column, so that a change shows as a change of few lines. */
    private static final int LINE_WIDTH = 100;
    private static final Map<Object, Object> OPTIONS = Map.of(
            XMLResource.OPTION_ENCODING, StandardCharsets.UTF_8.name(),
            XMLResource.OPTION_LINE_WIDTH, LINE_WIDTH,
            Resource.OPTION_LINE_DELIMITER, "\n",
            // A default that a later version changes must not change what an old file says.
            XMLResource.OPTION_KEEP_DEFAULT_CONTENT, true);

    private StackWriter() {
    }

    /**
     * The bytes of a positioner, the same for the same content on every machine.
     *
     * @param positioner what to write; it stays as and where it is
     * @param file the file they are meant for, for messages
     * @throws StackFileException if reading the bytes would not give the same positioner again
     */
    static byte[] write(Positioner positioner, Path file) throws StackFileException {
        Positioner copy = EcoreUtil.copy(positioner);
        new Savable(file).check(positioner);
        RunIds.complete(copy);
        defaultsForNothing(copy);
        byte[] bytes = serialize(copy);
        if (!EcoreUtil.equals(copy, StackParser.parse(StackText.decode(file, bytes)))) {
            throw new StackFileException(Problem.UNSAVABLE, file, "what was to be saved reads back differently, so"
                    + " nothing was written; the old file stands as it was.", null);
        }
        return bytes;
    }

    /** A file cannot say that an attribute with a default holds nothing: absent, it has the default. */
    private static void defaultsForNothing(Positioner copy) {
        copy.eAllContents().forEachRemaining(StackWriter::defaultForNothing);
        defaultForNothing(copy);
    }

    private static void defaultForNothing(EObject part) {
        for (EAttribute attribute : part.eClass().getEAllAttributes()) {
            if (part.eGet(attribute) == null) {
                part.eUnset(attribute);
            }
        }
    }

    /** Starts a line behind the namespaces, where the serializer does not look at its line width. */
    private static String wrapRoot(String text) {
        String namespace = "xmlns:ps=\"" + PitchstackPackage.eNS_URI + "\" ";
        int end = text.indexOf(namespace) + namespace.length();
        return end < namespace.length() ? text : text.substring(0, end - 1) + "\n    " + text.substring(end);
    }

    private static byte[] serialize(Positioner positioner) {
        Resource resource = new XMIResourceImpl(URI.createURI(StackFile.EXTENSION));
        resource.getContents().add(positioner);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            resource.save(out, OPTIONS);
        } catch (IOException e) {
            // The stream is in memory, and all that the serializer could refuse has been looked for before.
            throw new IllegalStateException(e);
        }
        return wrapRoot(out.toString(StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
    }
}
