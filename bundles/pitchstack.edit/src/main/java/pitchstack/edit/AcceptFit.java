// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import pitchstack.model.IndexError;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Stage;

/**
 * Takes what a run has told over into the stages, from where the planner uses it.
 *
 * @param run the run
 * @param stages what it told of each stage
 */
public record AcceptFit(MeasurementRun run, List<Fitted> stages) implements Edit {
    /**
     * What a run told of a stage.
     *
     * @param stage the stage
     * @param correctionPpm how much longer its pitch is than drawn, parts in a million
     * @param uncertaintyPpm its standard uncertainty
     * @param indexErrors errors of single indices with their units, in place of those that are there; empty to leave these
     */
    public record Fitted(Stage stage, double correctionPpm, double uncertaintyPpm,
            Optional<SortedMap<Integer, String>> indexErrors) {
        /** Copies the map. */
        public Fitted {
            indexErrors = indexErrors.map(TreeMap::new);
        }
    }

    /** Copies the list. */
    public AcceptFit {
        stages = List.copyOf(stages);
    }

    @Override
    public String label() {
        return "Accept the fit of " + RunWords.title(run);
    }

    @Override
    public void apply() {
        for (Fitted fitted : stages) {
            Stage stage = fitted.stage();
            stage.setCorrectionPpm(fitted.correctionPpm());
            stage.setCorrectionUncertaintyPpm(fitted.uncertaintyPpm());
            stage.setCorrectionRun(run);
            fitted.indexErrors().ifPresent(errors -> write(stage, errors));
        }
    }

    private static void write(Stage stage, SortedMap<Integer, String> errors) {
        stage.getIndexErrors().clear();
        errors.forEach((index, text) -> {
            IndexError error = PitchstackFactory.eINSTANCE.createIndexError();
            error.setIndex(index);
            error.setError(text);
            stage.getIndexErrors().add(error);
        });
    }
}
