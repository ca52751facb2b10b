// SPDX-License-Identifier: EPL-2.0
package pitchstack.edit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import pitchstack.analysis.accuracy.AxisFit;
import pitchstack.analysis.accuracy.RunReader;
import pitchstack.model.Approach;
import pitchstack.model.Axis;
import pitchstack.model.BedDirection;
import pitchstack.model.MeasurementRun;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.PitchstackPackage.Literals;
import pitchstack.model.Positioner;
import pitchstack.model.PrintSetup;
import pitchstack.model.Reading;
import pitchstack.model.Span;
import pitchstack.model.Stage;

/** Random edits of measurements. */
final class MeasurementEdits {
    private MeasurementEdits() {
    }

    /** An edit of the axis that is looked at, which has stages. */
    static Edit random(Session session, Random random) {
        Axis axis = session.axis();
        if (axis.getRuns().isEmpty()) {
            return AddElement.run(axis, NewStack.run(axis, LocalDate.of(2026, 3, 1 + random.nextInt(28))));
        }
        MeasurementRun run = axis.getRuns().get(random.nextInt(axis.getRuns().size()));
        Stage stage = axis.getStages().get(random.nextInt(axis.getStages().size()));
        return switch (run.getReadings().isEmpty() ? 0 : random.nextInt(8)) {
            case 0, 1 -> new AddReadings(run, random.nextInt(run.getReadings().size() + 1),
                    List.of(reading(axis, random), reading(axis, random)), "Add 2 readings");
            case 2 -> new RemoveReadings(run.getReadings().subList(0, 1 + random.nextInt(run.getReadings().size())));
            case 3 -> changed(run.getReadings().get(random.nextInt(run.getReadings().size())), random);
            case 4 -> new FillReadings(run.getReadings().subList(0, 1), List.of(random.nextInt(100) + " mm"));
            case 5 -> accepted(session, run, random);
            case 6 -> new TypeCorrection(stage, random.nextBoolean() ? Literals.STAGE__CORRECTION_PPM
                    : Literals.STAGE__CORRECTION_UNCERTAINTY_PPM, random.nextInt(500), "Type a correction");
            default -> new ShapeTeeth(stage, Literals.TOOTH_FORM__DEPTH, random.nextBoolean() ? null
                    : random.nextInt(1, 9) + " mm", "Change depth");
        };
    }

    private static Edit changed(Reading reading, Random random) {
        return new ChangeReading(reading, random.nextInt(reading.getSetting().size()), random.nextInt(9), "Change an index");
    }

    private static Reading reading(Axis axis, Random random) {
        Reading reading = PitchstackFactory.eINSTANCE.createReading();
        axis.getStages().forEach(stage -> reading.getSetting().add(random.nextInt(20)));
        reading.setApproach(random.nextBoolean() ? Approach.UP : Approach.DOWN);
        reading.setValue(random.nextInt(300) + " mm");
        return reading;
    }

    /** A run of its own tells the stages apart, or else nothing is accepted. */
    private static Edit accepted(Session session, MeasurementRun run, Random random) {
        Axis axis = session.axis();
        AxisFit fit = AxisFit.of(RunReader.read(axis, session.analysis().spec(), run), session.analysis().current());
        return fit.fit().isPresent() ? new AcceptFit(axis, run, fit, random.nextBoolean())
                : new AddReadings(run, 0, telling(axis, random), "Add telling readings");
    }

    private static List<Reading> telling(Axis axis, Random random) {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < 3 * (axis.getStages().size() + 2); i++) {
            readings.add(reading(axis, random));
        }
        return readings;
    }

    /** An edit of what was measured on printed parts. */
    static Edit printed(Positioner positioner, Random random) {
        if (positioner.getPrintSetups().isEmpty()) {
            PrintSetup setup = PitchstackFactory.eINSTANCE.createPrintSetup();
            setup.setName("flat " + random.nextInt(10));
            return AddElement.printSetup(positioner, setup);
        }
        Span span = PitchstackFactory.eINSTANCE.createSpan();
        span.setDirection(random.nextBoolean() ? BedDirection.X : BedDirection.Y);
        span.setDrawn("100 mm");
        span.setMeasured(random.nextInt(90, 110) + " mm");
        return new SetPrintSpans(positioner.getPrintSetups().get(0), List.of(span));
    }
}
