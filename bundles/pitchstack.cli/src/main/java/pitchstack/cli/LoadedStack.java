// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.analysis.accuracy.AccuracyFindings;
import pitchstack.core.check.Finding;
import pitchstack.core.check.Severity;
import pitchstack.core.plan.Planner;
import pitchstack.core.units.TrueMinus;
import pitchstack.model.ApproachRule;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.file.StackFile;
import pitchstack.model.file.StackFileException;

/** A stack file that was read, as the commands use it. */
final class LoadedStack {
    private final String file;
    private final Positioner positioner;
    private String supposed = "";
    private String checkOptions = "";

    private LoadedStack(String file, Positioner positioner) {
        this.file = file;
        this.positioner = positioner;
    }

    /**
     * Reads a file.
     *
     * @param file its name as typed
     * @throws BadInputException if it cannot be read, or is no sound stack file
     */
    static LoadedStack load(String file) throws BadInputException {
        if (file.isBlank()) {
            throw new BadInputException("The name of the stack file is empty.");
        }
        try {
            return new LoadedStack(file, StackFile.load(Path.of(file)).positioner());
        } catch (StackFileException e) {
            throw new BadInputException(e.getMessage());
        } catch (InvalidPathException e) {
            throw new BadInputException("“" + file + "” cannot be the name of a file here.");
        }
    }

    /** The device as read, with what the command supposes of it. */
    Positioner positioner() {
        return positioner;
    }

    /**
     * Writes the device into its file; the file before stays as a backup copy.
     *
     * @return the name of the backup copy
     * @throws BadInputException if the folder or the disk does not take it
     */
    String save() throws BadInputException {
        try {
            StackFile.save(positioner, Path.of(file));
            return file + StackFile.BACKUP_SUFFIX;
        } catch (StackFileException e) {
            throw new BadInputException(e.getMessage());
        }
    }

    /** The title, or the name of the file where there is none. */
    String title() {
        String title = positioner.getTitle();
        return title == null || title.isBlank() ? Path.of(file).getFileName().toString() : title;
    }

    /** The command that checks this file, at the same temperature. */
    String checkCommand() {
        return "pitchstack check " + quoted(file) + checkOptions;
    }

    private static String quoted(String word) {
        return word.matches("\\S+") ? word : '"' + word + '"';
    }

    /**
     * What is known of each axis, in the order of the file.
     *
     * @throws BadInputException if there is none
     */
    List<AxisAnalysis> analyses() throws BadInputException {
        if (positioner.getAxes().isEmpty()) {
            throw new BadInputException("“" + title() + "” has no axis to check.");
        }
        return positioner.getAxes().stream().map(this::analysis).toList();
    }

    /**
     * Supposes another temperature than that of the file, of what was read from it.
     *
     * @param celsius the temperature
     * @param typed how it was typed
     */
    void supposeTemperature(double celsius, String typed) {
        positioner.setTemperatureC(celsius);
        supposed = " at " + TrueMinus.in(BigDecimal.valueOf(celsius).setScale(1, RoundingMode.HALF_EVEN).stripTrailingZeros()
                .toPlainString()) + " °C";
        checkOptions = " --temperature " + quoted(typed);
    }

    /** The title, with the temperature where another one is supposed. */
    String heading() {
        return title() + supposed;
    }

    /**
     * What is known of one axis.
     *
     * @param name its name in any case, or null where the file has but one axis
     * @param approach the approach rule to suppose instead of that of the file
     * @throws BadInputException if that is not one axis
     */
    AxisAnalysis analysis(String name, Optional<ApproachRule> approach) throws BadInputException {
        Axis axis = axisOrOnly(name);
        approach.ifPresent(axis::setApproach);
        return analysis(axis);
    }

    private AxisAnalysis analysis(Axis axis) {
        return AccuracyFindings.with(positioner, AxisAnalysis.of(positioner, axis));
    }

    /**
     * One axis.
     *
     * @param name its name in any case, or null where the file has but one axis
     * @throws BadInputException if that is not one axis
     */
    Axis axisOrOnly(String name) throws BadInputException {
        return name == null ? onlyAxis() : axis(name);
    }

    /**
     * The planner of an axis.
     *
     * @throws BadInputException if the axis has errors
     */
    Planner planner(AxisAnalysis analysis) throws BadInputException {
        if (analysis.planner().isPresent()) {
            return analysis.planner().get();
        }
        throw unsound(analysis, "planned");
    }

    /**
     * Makes sure of an axis that nothing is wrong with it.
     *
     * @param toBe what is to be done with it, such as drawn
     * @throws BadInputException if the axis has errors
     */
    void demandSound(AxisAnalysis analysis, String toBe) throws BadInputException {
        if (analysis.hasErrors()) {
            throw unsound(analysis, toBe);
        }
    }

    private BadInputException unsound(AxisAnalysis analysis, String toBe) {
        Finding first = analysis.findings().stream().filter(f -> f.severity() == Severity.ERROR).findFirst().orElseThrow();
        return new BadInputException("Nothing can be " + toBe + " on axis “" + analysis.spec().name()
                + "” before this is mended: " + first.sentence() + " All findings: " + checkCommand());
    }

    private Axis onlyAxis() throws BadInputException {
        List<Axis> axes = positioner.getAxes();
        if (axes.isEmpty()) {
            throw new BadInputException("“" + title() + "” has no axis.");
        }
        if (axes.size() > 1) {
            throw new BadInputException("“" + title() + "” has " + axes.size() + " axes; name one of them with --axis: "
                    + names() + ".");
        }
        return axes.get(0);
    }

    private Axis axis(String name) throws BadInputException {
        List<Axis> exact = positioner.getAxes().stream().filter(a -> name.equals(a.getName())).toList();
        List<Axis> named = !exact.isEmpty() ? exact
                : positioner.getAxes().stream().filter(a -> name.equalsIgnoreCase(a.getName())).toList();
        if (named.isEmpty()) {
            throw new BadInputException("“" + title() + "” has no axis “" + name + "”; it has " + names() + ".");
        }
        if (named.size() > 1) {
            throw new BadInputException("“" + title() + "” has " + named.size() + " axes “" + name
                    + "”; give them different names in the file first.");
        }
        return named.get(0);
    }

    private String names() {
        return positioner.getAxes().stream().map(a -> "“" + (a.getName() == null ? "" : a.getName()) + "”")
                .collect(Collectors.joining(", "));
    }
}
