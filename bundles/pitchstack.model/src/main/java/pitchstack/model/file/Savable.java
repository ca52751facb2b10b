// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import pitchstack.model.MeasurementRun;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFileException.Problem;

/**
 * Looks for what a file cannot hold before any of it is written.
 *
 * @param file the file it is meant for, for messages
 */
record Savable(Path file) {
    /** Refuses a positioner that could not be read again. */
    void check(Positioner positioner) throws StackFileException {
        List<MeasurementRun> runs = RunIds.runs(positioner);
        Set<MeasurementRun> known = Set.copyOf(runs);
        checkPart(positioner, known);
        for (TreeIterator<EObject> parts = positioner.eAllContents(); parts.hasNext();) {
            checkPart(parts.next(), known);
        }
        Set<String> ids = new HashSet<>();
        for (MeasurementRun run : runs) {
            if (run.getId() != null && !ids.add(run.getId())) {
                throw refuse("two measurement runs have the id " + Words.quote(run.getId())
                        + "; give one of them another.");
            }
        }
    }

    private void checkPart(EObject part, Set<MeasurementRun> runs) throws StackFileException {
        for (EAttribute attribute : part.eClass().getEAllAttributes()) {
            Object value = part.eGet(attribute);
            for (Object one : value instanceof List<?> several ? several : Collections.singletonList(value)) {
                checkValue(part, attribute, one);
            }
        }
        for (EReference reference : part.eClass().getEAllReferences()) {
            if (!reference.isContainment() && part.eGet(reference) instanceof MeasurementRun run
                    && !runs.contains(run)) {
                throw refuse(Words.part(part) + " takes its correction from a measurement run that is not in this"
                        + " file; choose one of its own, or none.");
            }
        }
    }

    private void checkValue(EObject part, EAttribute attribute, Object value) throws StackFileException {
        if (value instanceof Double number && !Double.isFinite(number)) {
            throw refuse(attribute.getName() + " of " + Words.part(part) + " is " + number
                    + "; a file holds numbers with an end only.");
        }
        if (value instanceof String text) {
            int[] bad = text.codePoints().filter(c -> !isXml(c)).limit(1).toArray();
            if (bad.length > 0) {
                throw refuse(String.format(Locale.ROOT, "%s of %s holds the control character U+%04X, which"
                        + " a file cannot hold; take it out.", attribute.getName(), Words.part(part), bad[0]));
            }
        }
    }

    /** Whether a character may stand in XML 1.0 (its production 2); half a surrogate pair may not. */
    private static boolean isXml(int c) {
        return c == '\t' || c == '\n' || c == '\r' || (c >= 0x20 && c <= 0xD7FF) || (c >= 0xE000 && c <= 0xFFFD)
                || c >= 0x10000;
    }

    private StackFileException refuse(String sentence) {
        return new StackFileException(Problem.UNSAVABLE, file, sentence, null);
    }
}
