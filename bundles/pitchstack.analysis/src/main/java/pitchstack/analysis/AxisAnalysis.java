// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import pitchstack.core.check.Checks;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.core.check.Subject;
import pitchstack.core.plan.Planner;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;

/**
 * What is known of one axis: its numbers, what the checks say of them, and a planner where they are sound.
 * Immutable: made anew after a change of the document.
 */
public final class AxisAnalysis {
    private final Axis axis;
    private final AxisReading reading;
    private final List<Finding> findings;
    private final Optional<Planner> planner;

    private AxisAnalysis(Axis axis, AxisReading reading, List<Finding> findings, Optional<Planner> planner) {
        this.axis = axis;
        this.reading = reading;
        this.findings = List.copyOf(findings);
        this.planner = planner;
    }

    /** Reads and checks an axis, and prepares its planner if no error was found. */
    public static AxisAnalysis of(Positioner positioner, Axis axis) {
        return of(positioner, axis, null);
    }

    /**
     * The same, keeping the planner of an earlier analysis if the numbers it was made for have not changed; moving a
     * stage does not change them.
     *
     * @param earlier an earlier analysis, of this axis or another, or {@code null}
     */
    public static AxisAnalysis of(Positioner positioner, Axis axis, AxisAnalysis earlier) {
        AxisReading reading = AxisReader.read(positioner, axis);
        List<Finding> findings = new ArrayList<>(reading.unreadable().isEmpty()
                ? Checks.run(new Subject(reading.spec(), reading.current(), reading.lineWidthM()))
                : reading.unreadable());
        findings.addAll(reading.remarks());
        findings.addAll(NameFindings.of(positioner, axis));
        if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return new AxisAnalysis(axis, reading, findings, Optional.empty());
        }
        boolean same = earlier != null && earlier.planner.isPresent() && earlier.spec().equals(reading.spec());
        return new AxisAnalysis(axis, reading, findings,
                same ? earlier.planner : Optional.of(Planner.of(reading.spec())));
    }

    /** The axis of the model. */
    public Axis axis() {
        return axis;
    }

    /** The axis in numbers. */
    public AxisSpec spec() {
        return reading.spec();
    }

    /** Where the stages stand. */
    public Setting current() {
        return reading.current();
    }

    /** Which way each stage moved last. */
    public Directions last() {
        return reading.last();
    }

    /** What the checks found. */
    public List<Finding> findings() {
        return findings;
    }

    /** The planner; empty while a finding is an error. */
    public Optional<Planner> planner() {
        return planner;
    }

    /** Whether any finding is an error, so that nothing can be planned. */
    public boolean hasErrors() {
        return planner.isEmpty();
    }
}
