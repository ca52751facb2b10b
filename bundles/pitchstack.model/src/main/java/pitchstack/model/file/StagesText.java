// SPDX-License-Identifier: EPL-2.0
package pitchstack.model.file;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import pitchstack.model.Axis;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/**
 * Stages as text, to be copied from one document to another. The text is that of a stack file whose one axis has these
 * stages, so that it is read as strictly as a file, and pasting it into an empty file gives a file.
 */
public final class StagesText {
    private static final Path NAME = Path.of("copied stages");

    private StagesText() {
    }

    /**
     * The text of some stages of one axis, lowest first. What a pitch correction was measured by stays behind.
     *
     * @param stages at least one stage; they stay where they are
     * @throws StackFileException if a file could not hold them
     */
    public static String write(List<Stage> stages) throws StackFileException {
        Positioner positioner = PitchstackFactory.eINSTANCE.createPositioner();
        Axis axis = PitchstackFactory.eINSTANCE.createAxis();
        positioner.getAxes().add(axis);
        if (stages.get(0).eContainer() instanceof Axis from) {
            axis.setKind(from.getKind());
        }
        axis.getStages().addAll(EcoreUtil.copyAll(stages));
        axis.getStages().forEach(stage -> stage.setCorrectionRun(null));
        return new String(StackWriter.write(positioner, NAME), StandardCharsets.UTF_8);
    }

    /**
     * The stages of the first axis in a text, lowest first, in no document.
     *
     * @throws StackFileException if the text is not that of a stack file, or has no stage
     */
    public static List<Stage> read(String text) throws StackFileException {
        Positioner positioner = StackParser.parse(StackText.decode(NAME, text.getBytes(StandardCharsets.UTF_8)));
        List<Stage> stages = positioner.getAxes().isEmpty() ? List.of() : List.copyOf(positioner.getAxes().get(0).getStages());
        if (stages.isEmpty()) {
            throw new StackFileException(StackFileException.Problem.WRONG_CONTENT, NAME, "there is no stage in it.", null);
        }
        stages.forEach(EcoreUtil::remove);
        stages.forEach(stage -> stage.setCorrectionRun(null));
        return stages;
    }
}
