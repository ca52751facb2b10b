// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis.accuracy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.core.accuracy.fit.Allowed;
import pitchstack.core.accuracy.fit.FitOptions;
import pitchstack.core.accuracy.fit.FitOutcome;
import pitchstack.core.accuracy.fit.Identifiability;
import pitchstack.core.accuracy.fit.IndexErrorMap;
import pitchstack.core.accuracy.fit.PitchFit;
import pitchstack.core.accuracy.fit.Reading;
import pitchstack.core.accuracy.fit.TellingSettings;
import pitchstack.core.stack.Setting;

/**
 * A run fitted to its axis.
 *
 * @param run the run
 * @param outcome what came of it
 * @param proposals where the run cannot tell, settings that would, most telling first; otherwise none
 * @param maps errors of single indices, of the stages for which the run says them
 */
public record AxisFit(RunReading run, FitOutcome outcome, List<Setting> proposals, List<IndexErrorMap> maps) {
    /** Copies the lists. */
    public AxisFit {
        proposals = List.copyOf(proposals);
        maps = List.copyOf(maps);
    }

    /**
     * Fits a run.
     *
     * @param run of an axis
     * @param home the setting from which stages move alone where settings are proposed, as a rule where they stand
     */
    public static AxisFit of(RunReading run, Setting home) {
        if (run.readings().isEmpty()) {
            return new AxisFit(run, new FitOutcome.TooFew(0, 2 + run.stages().size()), proposals(run, home), List.of());
        }
        // An instrument's own uncertainty leaves out how rows seat, and repeats of a setting share the errors of its teeth.
        FitOutcome outcome = PitchFit.of(run.stages(), run.readings(),
                new FitOptions(FitOptions.Scatter.BETWEEN_SETTINGS, run.instrumentScale()));
        List<IndexErrorMap> maps = new ArrayList<>();
        if (outcome instanceof PitchFit fit) {
            for (int j = 0; j < run.stages().size(); j++) {
                IndexErrorMap.of(fit, j).ifPresent(maps::add);
            }
        }
        boolean open = outcome instanceof FitOutcome.Undetermined;
        return new AxisFit(run, outcome, open ? proposals(run, home) : List.of(), maps);
    }

    private static List<Setting> proposals(RunReading run, Setting home) {
        return new Allowed(run.spec()).allows(home) ? new TellingSettings(run.spec(), home, run.stages())
                .beside(run.readings().stream().map(Reading::setting).toList()) : List.of();
    }

    /** The fit, where the run tells every stage. */
    public Optional<PitchFit> fit() {
        return outcome instanceof PitchFit fit ? Optional.of(fit) : Optional.empty();
    }

    /** Why there is no fit, in a sentence with the way out; nothing where there is one. */
    public Optional<String> whyNot() {
        if (outcome instanceof FitOutcome.TooFew few) {
            return Optional.of("The run has " + few.readings() + (few.readings() == 1 ? " reading" : " readings")
                    + " that can be used; a fit of this axis needs " + few.needed()
                    + " at least, so that some are left to show how good it is.");
        }
        return outcome instanceof FitOutcome.Undetermined open ? Optional.of(sentence(open.what())) : Optional.empty();
    }

    private String sentence(Identifiability what) {
        List<String> parts = new ArrayList<>();
        if (!what.unmoved().isEmpty()) {
            parts.add(titles(what.unmoved(), " and ") + " never moved in it");
        }
        for (List<Integer> group : what.tied()) {
            parts.add(group.size() > 1 ? titles(group, " and ") + " cannot be told from each other, since they moved together"
                    : titles(group, "") + " cannot be told from the datum or from the side of approach");
        }
        return "The run does not tell every stage: " + String.join("; ", parts) + ". "
                + (proposals.isEmpty() ? "Move each stage by itself." : "Measure also: " + proposals.stream()
                        .map(this::words).collect(Collectors.joining("; ")) + ".");
    }

    private String words(Setting setting) {
        List<String> parts = new ArrayList<>();
        for (int j = 0; j < run.stages().size(); j++) {
            parts.add(run.stages().get(j).title() + " " + setting.index(j));
        }
        return String.join(", ", parts);
    }

    private String titles(List<Integer> stages, String between) {
        return stages.stream().map(j -> run.stages().get(j).title()).collect(Collectors.joining(between));
    }
}
