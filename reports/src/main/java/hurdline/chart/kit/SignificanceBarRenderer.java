package hurdline.chart.kit;

import java.awt.Paint;
import java.util.List;

/** Bars with their intervals; one whose interval covers zero is pale and dotted. */
public final class SignificanceBarRenderer extends IntervalBars {
  private static final long serialVersionUID = 1L;

  private final transient List<Boolean> told;

  /**
   * @param told for each category whether its interval leaves zero out
   */
  public SignificanceBarRenderer(List<Boolean> told) {
    this.told = told;
  }

  @Override
  public Paint getItemPaint(int series, int category) {
    return told.get(category)
        ? Palette.BLUE
        : new Hatch(Palette.GRID, Palette.INK, Hatch.Kind.DOTTED);
  }
}
