// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.parts;

import java.util.ArrayList;
import java.util.List;
import pitchstack.analysis.part.PartSet;
import pitchstack.analysis.part.RowReading;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.Stage;

/** What can be made of a stack. */
sealed interface WantedParts {
    /** What people read in the list. */
    String words();

    /** Every printed row of all axes, on one bed. */
    record Printed(Positioner positioner) implements Rows {
        @Override
        public String words() {
            return "All printed rows";
        }

        @Override
        public List<RowReading> read() {
            return PartSet.printed(positioner, positioner.getAxes());
        }
    }

    /** The rows of one stage: those that are printed, or both for reference. */
    record OfStage(Positioner positioner, Axis axis, Stage stage) implements Rows {
        @Override
        public String words() {
            String name = stage.getName() == null || stage.getName().isBlank()
                    ? "Stage " + (axis.getStages().indexOf(stage) + 1) : stage.getName();
            return positioner.getAxes().size() == 1 ? name : axis.getName() + ": " + name;
        }

        @Override
        public List<RowReading> read() {
            return PartSet.of(positioner, axis, stage);
        }
    }

    /** Rows of the stack. */
    sealed interface Rows extends WantedParts {
        /** Reads them off the model. */
        List<RowReading> read();
    }

    /** The coupon to calibrate a printer with. */
    record TestCoupon() implements WantedParts {
        @Override
        public String words() {
            return "Coupon to calibrate the printer";
        }
    }

    /** All of a device, the whole plate first. */
    static List<WantedParts> of(Positioner positioner) {
        List<WantedParts> wanted = new ArrayList<>();
        wanted.add(new Printed(positioner));
        for (Axis axis : positioner.getAxes()) {
            axis.getStages().forEach(stage -> wanted.add(new OfStage(positioner, axis, stage)));
        }
        wanted.add(new TestCoupon());
        return wanted;
    }
}
