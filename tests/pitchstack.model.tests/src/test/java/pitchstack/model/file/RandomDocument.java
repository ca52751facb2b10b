// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.util.List;
import java.util.random.RandomGenerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** Fills a positioner at random, following the model, so that a new feature is covered the day it appears. */
final class RandomDocument {
    private static final List<String> AWKWARD = List.of("\"", "'", "&", "<", ">", "]]>", "&amp;", "\n", "\r", "\t", "\r\n", " ",
            "\u00e4", "\u0130", "\u0131", "\u0663", "\u03c0", "\u2033", "\u2212", "\u0085", "\u2028", "\u200f", "\u00a0",
            "\ud83d\udd27", "\ufffd", "\ue000", "\u007f", "--", "<!--", "<?", "${x}", "\\", "%20");
    private final RandomGenerator random;

    RandomDocument(RandomGenerator random) {
        this.random = random;
    }

    /** A positioner with every feature set now and then. */
    Positioner positioner() {
        Positioner positioner = PitchstackFactory.eINSTANCE.createPositioner();
        fill(positioner);
        List<MeasurementRun> runs = RunIds.runs(positioner);
        RunIds.complete(positioner);
        positioner.eAllContents().forEachRemaining(part -> {
            if (part instanceof Stage stage && !runs.isEmpty() && random.nextBoolean()) {
                stage.setCorrectionRun(runs.get(random.nextInt(runs.size())));
            }
        });
        return positioner;
    }

    private void fill(EObject part) {
        for (EAttribute attribute : part.eClass().getEAllAttributes()) {
            if (attribute.isMany()) {
                for (int i = random.nextInt(4); i > 0; i--) {
                    Allowed.list(part, attribute).add(value(attribute));
                }
            } else if (!attribute.isID() && random.nextInt(5) > 0) {
                part.eSet(attribute, value(attribute));
            }
        }
        for (EReference reference : part.eClass().getEAllContainments()) {
            if (reference.isMany()) {
                for (int i = random.nextInt(4); i > 0; i--) {
                    Allowed.list(part, reference).add(child(reference));
                }
            } else if (random.nextInt(4) > 0) {
                part.eSet(reference, child(reference));
            }
        }
    }

    private EObject child(EReference reference) {
        EObject child = EcoreUtil.create(reference.getEReferenceType());
        fill(child);
        return child;
    }

    private Object value(EAttribute attribute) {
        if (attribute.getEAttributeType() instanceof EEnum words) {
            return words.getELiterals().get(random.nextInt(words.getELiterals().size())).getInstance();
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == int.class) {
            return random.nextInt(4) == 0 ? random.nextInt() : random.nextInt(100) - 50;
        }
        return type == double.class ? decimal() : text();
    }

    private Double decimal() {
        return switch (random.nextInt(6)) {
            case 0 -> 0.0;
            case 1 -> -0.0;
            case 2 -> Double.MIN_VALUE;
            case 3 -> -Double.MAX_VALUE;
            case 4 -> Math.rint(random.nextDouble() * 1000) / 10;
            default -> (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(40) - 20);
        };
    }

    private String text() {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(12); i > 0; i--) {
            text.append(random.nextInt(3) == 0 ? AWKWARD.get(random.nextInt(AWKWARD.size()))
                    : (char) ('a' + random.nextInt(26)));
        }
        return text.toString();
    }
}
