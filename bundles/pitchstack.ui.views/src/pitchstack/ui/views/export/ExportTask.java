// SPDX-License-Identifier: EPL-2.0
package pitchstack.ui.views.export;

import java.util.function.Function;
import pitchstack.core.plan.Progress;

/**
 * What is to be done for the choices as they stand.
 *
 * @param ending of the file's name, without the point
 * @param work does it, on another thread
 */
public record ExportTask(String ending, Function<Progress, ExportWork> work) { }
