package hurdline.chart.yard;

import hurdline.answer.GroundPlan;
import hurdline.answer.YardAnswer;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.Wording;
import java.awt.BasicStroke;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.apache.batik.svggen.SVGGraphics2D;

/** The stacks of a place from above, to scale, set out as near to a square as they go. */
public final class GroundChart {
  private static final int EDGE = 24;
  private static final int FOOT = 46;
  private static final int TALLEST = 620;

  /** More stacks than this are a few pixels each, and drawing them takes longer than the plant. */
  private static final int MOST_DRAWN = 10_000;

  /** In whatever unit the page shows. */
  private static final int[] BARS = {5, 10, 20, 50, 100, 200, 500};

  private final GroundPlan plan;
  private final String unit;
  private final Wording wording;
  private final int across;
  private final int rows;

  public GroundChart(YardAnswer answer, GroundPlan plan, Wording wording) {
    this.plan = plan;
    unit = answer.asked().unit();
    this.wording = wording;
    double square = Math.sqrt(plan.stacks() * cellWideM() / cellLongM());
    across = Math.max(1, Math.min(plan.stacks(), (int) Math.round(square)));
    rows = (plan.stacks() - 1) / across + 1;
  }

  private double cellLongM() {
    return plan.longM() + plan.laneM();
  }

  private double cellWideM() {
    return plan.wideM() + plan.laneM();
  }

  public Chart figure() {
    String title = "Ground plan of " + wording.titles().placeInText(plan.place());
    String name = "ground-" + plan.place();
    return new Chart(name, title, alternative(), draw(name, title), table());
  }

  private String draw(String name, String title) {
    double wideM = across * cellLongM();
    double tallM = rows * cellWideM();
    double scale = scale(wideM, tallM);
    int height = (int) Math.ceil(tallM * scale) + EDGE + FOOT;
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), height);
    SVGGraphics2D pen = canvas.graphics();
    pen.setPaint(Palette.GRID);
    pen.fill(new Rectangle2D.Double(EDGE, EDGE, wideM * scale, tallM * scale));
    pen.setStroke(new BasicStroke(1));
    for (int stack = 0; isDrawn() && stack < plan.stacks(); stack++) {
      double x = EDGE + (stack % across * cellLongM() + plan.laneM() / 2) * scale;
      double y = EDGE + (stack / across * cellWideM() + plan.laneM() / 2) * scale;
      Rectangle2D box = new Rectangle2D.Double(x, y, plan.longM() * scale, plan.wideM() * scale);
      pen.setPaint(
          isBegun(stack) ? new Hatch(Palette.SKY, Palette.INK, Hatch.Kind.RISING) : Palette.SKY);
      pen.fill(box);
      pen.setPaint(Palette.INK);
      pen.draw(box);
    }
    bar(pen, scale, EDGE + tallM * scale);
    return canvas.finish(title, alternative());
  }

  /** Pixels a meter; 0 where there is nothing to scale. */
  private static double scale(double wideM, double tallM) {
    double scale =
        Math.min((ChartStyle.widthPx() - 2.0 * EDGE) / wideM, (TALLEST - EDGE - FOOT) / tallM);
    return Double.isFinite(scale) ? scale : 0;
  }

  /** Stack by stack; else as one ground. */
  private boolean isDrawn() {
    return plan.stacks() <= MOST_DRAWN;
  }

  /** Whether the last stack is not whole. */
  private boolean isBegun(int stack) {
    return stack == plan.stacks() - 1 && plan.bales() % plan.balesOfStack() != 0;
  }

  private void bar(SVGGraphics2D pen, double scale, double below) {
    double perUnit = scale / wording.shown(1, "m");
    int bar = BARS[0];
    for (int longer : BARS) {
      bar = longer * perUnit < ChartStyle.widthPx() / 3.0 ? longer : bar;
    }
    double end = EDGE + bar * perUnit;
    double y = below + 16;
    pen.setPaint(Palette.INK);
    pen.setStroke(new BasicStroke(2));
    pen.draw(new Line2D.Double(EDGE, y, end, y));
    pen.draw(new Line2D.Double(EDGE, y - 4, EDGE, y + 4));
    pen.draw(new Line2D.Double(end, y - 4, end, y + 4));
    pen.setFont(Fonts.of(12));
    pen.drawString(bar + " " + wording.unit("m"), EDGE, (float) y + 20);
  }

  private String alternative() {
    return plan.stacks()
        + (plan.stacks() == 1 ? " stack" : " stacks")
        + " from above, "
        + (isDrawn() ? "" : "too many to be drawn one by one, ")
        + across
        + " side by side, each "
        + wording.rough(plan.longM(), "m")
        + " by "
        + wording.rough(plan.wideM(), "m")
        + " with lanes of "
        + wording.rough(plan.laneM(), "m")
        + " between: "
        + wording.rough(plan.areaM2(), "m2")
        + " of ground for "
        + wording.fixed(plan.bales(), 0, unit)
        + " "
        + unit
        + ".";
  }

  private Chart.Grid table() {
    return new Chart.Grid(
        List.of("ground of " + wording.titles().placeInText(plan.place()), ""),
        List.of(
            List.of("holds", wording.fixed(plan.bales(), 0, unit) + " " + unit),
            List.of(
                plan.round()
                    ? "a stack, along · across below · layers"
                    : "a stack, along · across · up",
                plan.longBales()
                    + " · "
                    + plan.wideBales()
                    + " · "
                    + plan.highBales()
                    + " "
                    + unit),
            List.of(
                "a stack, long · wide · high",
                wording.roughly(plan.longM(), "m")
                    + " · "
                    + wording.roughly(plan.wideM(), "m")
                    + " · "
                    + wording.rough(plan.highM(), "m")),
            List.of("stacks", Integer.toString(plan.stacks())),
            List.of("lane between two", wording.rough(plan.laneM(), "m")),
            List.of("ground, half a lane round each", wording.rough(plan.areaM2(), "m2"))));
  }
}
