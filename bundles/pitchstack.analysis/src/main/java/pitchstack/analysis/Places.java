// SPDX-License-Identifier: EPL-2.0
package pitchstack.analysis;

import org.eclipse.emf.ecore.EObject;
import pitchstack.core.check.Place;
import pitchstack.model.Axis;
import pitchstack.model.Row;
import pitchstack.model.Stage;

/** Where in the model a finding belongs. */
public final class Places {
    private Places() {
    }

    /**
     * The element at a place of an axis, or the nearest one around it that exists.
     *
     * @param axis the axis that was checked
     * @param place a place in it
     */
    public static EObject element(Axis axis, Place place) {
        if (place.stage().isEmpty() || place.stage().getAsInt() >= axis.getStages().size()) {
            return axis;
        }
        Stage stage = axis.getStages().get(place.stage().getAsInt());
        Row row = switch (place.part()) {
            case WHOLE -> null;
            case BASE_ROW -> stage.getBaseRow();
            case RIDER_ROW -> stage.getRiderRow();
        };
        if (row == null) {
            return stage;
        }
        boolean known = place.worn().isPresent() && place.worn().getAsInt() < row.getWorn().size();
        return known ? row.getWorn().get(place.worn().getAsInt()) : row;
    }

    /**
     * The place in words: {@code stage “Rack”, base row, worn range 2}.
     *
     * @param axis the axis that was checked
     * @param place a place in it
     */
    public static String words(Axis axis, Place place) {
        if (place.stage().isEmpty()) {
            return "axis “" + axis.getName() + "”";
        }
        String stage = "stage “" + axis.getStages().get(place.stage().getAsInt()).getName() + "”";
        String part = switch (place.part()) {
            case WHOLE -> "";
            case BASE_ROW -> ", base row";
            case RIDER_ROW -> ", rider row";
        };
        return stage + part + (place.worn().isPresent() ? ", worn range " + (place.worn().getAsInt() + 1) : "");
    }
}
