// SPDX-License-Identifier: EPL-2.0
/** How long the planner and the coverage take, beside general-purpose solvers and beside what cannot be beaten. */
package pitchstack.benchmarks;
