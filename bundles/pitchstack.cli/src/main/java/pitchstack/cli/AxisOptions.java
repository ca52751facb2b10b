// SPDX-License-Identifier: EPL-2.0
package pitchstack.cli;

import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Option;
import pitchstack.analysis.AxisAnalysis;
import pitchstack.model.ApproachRule;

/** Which axis of the file, and at what temperature. */
final class AxisOptions {
    @Option(names = "--axis", paramLabel = "NAME", description = "The axis, where the file has several.")
    private String axis;

    @Option(names = "--temperature", paramLabel = "T",
            description = "The temperature of the stages, in °C, or like 82F. Default: as in the file.")
    private String temperature;

    /**
     * What is known of the axis.
     *
     * @param stack the file; the temperature is supposed of what was read, and the file stays as it is
     * @throws BadInputException if there is no such axis, or the temperature cannot be read
     */
    AxisAnalysis analysis(LoadedStack stack) throws BadInputException {
        return analysis(stack, Optional.empty());
    }

    /** The same with another approach rule than that of the file. */
    AxisAnalysis analysis(LoadedStack stack, Optional<ApproachRule> approach) throws BadInputException {
        suppose(stack);
        return stack.analysis(axis, approach);
    }

    /**
     * What is known of the axis that is named, or else of every axis.
     *
     * @throws BadInputException if there is none, or the temperature cannot be read
     */
    List<AxisAnalysis> analyses(LoadedStack stack) throws BadInputException {
        suppose(stack);
        return axis == null ? stack.analyses() : List.of(stack.analysis(axis, Optional.empty()));
    }

    private void suppose(LoadedStack stack) throws BadInputException {
        if (temperature != null) {
            stack.supposeTemperature(TypedTemperature.celsius(temperature), temperature);
        }
    }
}
