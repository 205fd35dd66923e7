/**
 * The drawing of a line with its mean flows, as boxes and pipes.
 *
 * <p>Rows of machines, pipes whose width follows the flow, the bottleneck marked, and sheets no
 * larger than a printed page: a line that needs more is drawn in parts, and a pipe that is cut ends
 * at a letter. No chart library here, plain drawing. Read {@link hurdline.chart.flow.FlowDiagram}
 * first, then FlowLayout.
 */
package hurdline.chart.flow;
