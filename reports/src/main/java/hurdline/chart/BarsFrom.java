package hurdline.chart;

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
import org.jfree.data.statistics.StatisticalCategoryDataset;

/** Lying bars from a value other than zero, each with its interval at its end; the library's bars with intervals begin at zero. */
final class BarsFrom extends BarRenderer {
  private static final long serialVersionUID = 1L;
  private static final double CAP = 3;

  @Override
  public Range findRangeBounds(CategoryDataset dataset) {
    return findRangeBounds(dataset, true);
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
    StatisticalCategoryDataset data = (StatisticalCategoryDataset) dataset;
    double half = data.getStdDevValue(row, column).doubleValue();
    if (half > 0) {
      double value = data.getMeanValue(row, column).doubleValue();
      double from = amounts.valueToJava2D(value - half, area, plot.getRangeAxisEdge());
      double to = amounts.valueToJava2D(value + half, area, plot.getRangeAxisEdge());
      double y =
          calculateBarW0(plot, plot.getOrientation(), area, categories, state, row, column) + state.getBarWidth() / 2;
      g2.setPaint(Palette.INK);
      g2.setStroke(new BasicStroke(1));
      g2.draw(new Line2D.Double(from, y, to, y));
      g2.draw(new Line2D.Double(from, y - CAP, from, y + CAP));
      g2.draw(new Line2D.Double(to, y - CAP, to, y + CAP));
    }
  }
}
