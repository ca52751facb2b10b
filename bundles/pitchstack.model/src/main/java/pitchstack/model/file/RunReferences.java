// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.xml.sax.SAXException;
import pitchstack.model.MeasurementRun;
import pitchstack.model.file.StackFileException.Problem;

/** The measurement runs of a file by their id, and what refers to them. They must all stand in the same file. */
final class RunReferences {
    private record Reference(EObject from, EReference feature, String id, Place end) { }

    private final Spot spot;
    private final Map<String, MeasurementRun> runs = new HashMap<>();
    private final List<Reference> references = new ArrayList<>();

    RunReferences(Spot spot) {
        this.spot = spot;
    }

    /** Takes up a part of the model that has its attributes; only runs matter. */
    void note(EObject part) throws SAXException {
        if (part instanceof MeasurementRun run && run.getId() != null && runs.put(run.getId(), run) != null) {
            throw spot.attribute("id", Problem.WRONG_CONTENT, "a second measurement run has the id "
                    + Words.quote(run.getId()) + "; every run needs an id of its own.");
        }
    }

    /** Takes up a reference, to be followed when the whole file is known. */
    void refer(EObject from, EReference feature, String id) {
        references.add(new Reference(from, feature, id, spot.place()));
    }

    /** Follows all references. */
    void resolve() throws SAXException {
        for (Reference reference : references) {
            MeasurementRun run = runs.get(reference.id());
            if (run == null) {
                String name = reference.feature().getName();
                throw spot.attribute(name, reference.end(), Problem.WRONG_CONTENT, name + " = "
                        + Words.quote(reference.id()) + " is the id of no measurement run in this file;"
                        + " it must be one of the same file.");
            }
            reference.from().eSet(reference.feature(), run);
        }
    }
}
