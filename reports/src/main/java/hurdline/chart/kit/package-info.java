/**
 * What all charts share: style, colors, hatches, fonts, the SVG canvas, axes and renderers.
 *
 * <p>Every chart is a {@link hurdline.chart.kit.Chart}: a drawing, its text alternative and the
 * table of its figures. Axes never have length zero and nothing is drawn beyond DrawingReach, so
 * odd values end in an odd picture and not in a loop. The font is brought along, so the same answer
 * gives the same bytes on every machine. Read ChartStyle first.
 */
package hurdline.chart.kit;
