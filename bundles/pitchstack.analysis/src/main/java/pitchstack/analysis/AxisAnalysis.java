// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import pitchstack.core.check.Checks;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Place;
import pitchstack.core.check.Severity;
import pitchstack.core.check.Subject;
import pitchstack.core.plan.Planner;
import pitchstack.core.stack.AxisSpec;
import pitchstack.core.stack.Directions;
import pitchstack.core.stack.Setting;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;

/**
 * What is known of one axis: its numbers, what the checks say of them, and a planner where they are sound. Made anew
 * after a change of the document; any thread may ask it.
 */
public final class AxisAnalysis {
    private final Axis axis;
    private final AxisReading reading;
    private final List<Finding> findings;
    private final Optional<LatePlanner> planner;

    private AxisAnalysis(Axis axis, AxisReading reading, List<Finding> findings, Optional<LatePlanner> planner) {
        this.axis = axis;
        this.reading = reading;
        this.findings = List.copyOf(findings);
        this.planner = planner;
    }

    /** Reads and checks an axis. */
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
        return of(positioner, axis, earlier, false);
    }

    /**
     * The same.
     *
     * @param fractions whether inches are shown as fractions where they are such
     */
    public static AxisAnalysis of(Positioner positioner, Axis axis, AxisAnalysis earlier, boolean fractions) {
        AxisReading reading = AxisReader.read(positioner, axis, fractions);
        List<Finding> findings = new ArrayList<>(reading.unreadable().isEmpty() ? checked(reading, positioner, axis)
                : reading.unreadable());
        findings.addAll(reading.remarks());
        findings.addAll(NameFindings.of(positioner, axis));
        if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return new AxisAnalysis(axis, reading, findings, Optional.empty());
        }
        boolean same = earlier != null && earlier.planner.isPresent() && earlier.spec().equals(reading.spec());
        return new AxisAnalysis(axis, reading, findings,
                same ? earlier.planner : Optional.of(new LatePlanner(reading.spec())));
    }

    private static List<Finding> checked(AxisReading reading, Positioner positioner, Axis axis) {
        TargetStops targets = TargetStops.of(axis, reading.spec());
        List<Finding> findings = new ArrayList<>(Checks.run(new Subject(reading.spec(), reading.current(),
                reading.lineWidthM(), PrintedForms.of(positioner, axis), targets.stops())));
        // A negative tolerance of the axis has a finding of its own; each target that takes it need not say so again.
        if (reading.spec().tolerance() >= 0) {
            targets.unread().forEach(sentence -> findings.add(
                    new Finding("unreadable-target", Severity.WARNING, Place.AXIS, "", "", sentence)));
        }
        return findings;
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

    /**
     * The position of a setting; empty where it cannot be told, since a text of the axis cannot be read or the numbers are
     * too large.
     */
    public OptionalLong position(Setting setting) {
        try {
            return reading.unreadable().isEmpty() ? OptionalLong.of(spec().position(setting)) : OptionalLong.empty();
        } catch (ArithmeticException tooLarge) {
            return OptionalLong.empty();
        }
    }

    /** The same axis with more findings, none of which is an error. */
    public AxisAnalysis with(List<Finding> more) {
        List<Finding> all = new ArrayList<>(findings);
        all.addAll(more);
        return new AxisAnalysis(axis, reading, all, planner);
    }

    /** What the checks found. */
    public List<Finding> findings() {
        return findings;
    }

    /**
     * The planner; empty while a finding is an error. Asked for the first time it is prepared, which takes up to about a
     * second for the largest axes, so that a window asks away from its own thread.
     */
    public Optional<Planner> planner() {
        return planner.map(LatePlanner::get);
    }

    /** Whether the planner is at hand without waiting. */
    public boolean isPrepared() {
        return planner.isPresent() && planner.get().isPrepared();
    }

    /** Whether any finding is an error, so that nothing can be planned. */
    public boolean hasErrors() {
        return planner.isEmpty();
    }
}
