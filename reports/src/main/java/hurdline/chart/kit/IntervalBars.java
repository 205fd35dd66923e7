package hurdline.chart.kit;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.data.Range;
import org.jfree.data.category.CategoryDataset;

/**
 * Lying bars of {@link IntervalData}, each with its interval; the library's bars with intervals
 * begin at zero and have limits at even distances only.
 */
public class IntervalBars extends BarRenderer {
  private static final long serialVersionUID = 1L;
  private static final double CAP = 3;

  public IntervalBars() {
    ChartStyle.flat(this);
  }

  /** So that no interval is cut by the edge of the drawing. */
  @Override
  public Range findRangeBounds(CategoryDataset dataset) {
    Range range = findRangeBounds(dataset, false);
    if (dataset instanceof IntervalData data) {
      for (int row = 0; row < data.getRowCount(); row++) {
        for (int column = 0; column < data.getColumnCount(); column++) {
          IntervalData.Limits limits = data.limits(row, column);
          if (range != null && limits != null && limits.hasWidth()) {
            range =
                Range.expandToInclude(Range.expandToInclude(range, limits.low()), limits.high());
          }
        }
      }
    }
    return range;
  }

  @Override
  public void drawItem(
      Graphics2D g2,
      CategoryItemRendererState state,
      Rectangle2D area,
      CategoryPlot plot,
      CategoryAxis categories,
      ValueAxis amounts,
      CategoryDataset dataset,
      int row,
      int column,
      int pass) {
    super.drawItem(g2, state, area, plot, categories, amounts, dataset, row, column, pass);
    IntervalData.Limits limits = ((IntervalData) dataset).limits(row, column);
    if (limits != null && limits.hasWidth()) {
      double from = amounts.valueToJava2D(limits.low(), area, plot.getRangeAxisEdge());
      double to = amounts.valueToJava2D(limits.high(), area, plot.getRangeAxisEdge());
      double y =
          calculateBarW0(plot, plot.getOrientation(), area, categories, state, row, column)
              + state.getBarWidth() / 2;
      g2.setPaint(Palette.INK);
      g2.setStroke(new BasicStroke(1.5f));
      g2.draw(new Line2D.Double(from, y, to, y));
      g2.draw(new Line2D.Double(from, y - CAP, from, y + CAP));
      g2.draw(new Line2D.Double(to, y - CAP, to, y + CAP));
    }
  }
}
