// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.tests.views;

import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.ecore.resource.Resource;
import org.eclipse.emf.ecore.resource.impl.ResourceImpl;
import pitchstack.edit.NewStack;
import pitchstack.edit.Session;
import pitchstack.model.Axis;
import pitchstack.model.Positioner;
import pitchstack.model.PitchstackFactory;
import pitchstack.model.Target;

/** Documents to test with. */
final class Stacks {
    private Stacks() {
    }

    /**
     * A 5 mm rack and a 4.9 mm stage, both at index 0, for steps of 0.1 mm, with a tolerance of 0.05 mm; two saved
     * targets.
     *
     * @param name tells documents apart
     */
    static Session millimetres(String name) {
        Positioner positioner = NewStack.positioner();
        positioner.setTitle(name);
        Axis axis = positioner.getAxes().get(0);
        axis.getTargets().add(target("First hole", "10.1 mm", null));
        axis.getTargets().add(target("Second hole", "24.9 mm", "0.02 mm"));
        Resource resource = new ResourceImpl(URI.createURI("test:/" + name));
        resource.getContents().add(positioner);
        return new Session(resource, fault -> {
            throw fault;
        });
    }

    private static Target target(String name, String position, String tolerance) {
        Target target = PitchstackFactory.eINSTANCE.createTarget();
        target.setName(name);
        target.setPosition(position);
        target.setTolerance(tolerance);
        return target;
    }
}
