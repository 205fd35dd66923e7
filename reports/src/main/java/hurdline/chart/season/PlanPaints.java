package hurdline.chart.season;

import hurdline.answer.Outline;
import hurdline.answer.SeasonAnswer;
import hurdline.chart.kit.Hatch;
import hurdline.chart.kit.Palette;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Paint;
import java.awt.geom.Rectangle2D;
import java.util.List;

/** One paint for each crop in all charts of season plans, and the bars that have it. */
final class PlanPaints {
  private PlanPaints() {}

  static Paint of(SeasonAnswer answer, String crop) {
    List<String> crops = crops(answer);
    return Palette.series(crops.indexOf(crop));
  }

  /** That of the crop that a line works. */
  static Paint ofLine(SeasonAnswer answer, String line) {
    return answer.plans().stream()
        .flatMap(plan -> plan.outline().lines().stream())
        .filter(each -> each.name().equals(line))
        .findFirst()
        .map(each -> of(answer, each.crop()))
        .orElseThrow();
  }

  /** Lines of all plans, in the order in which they are met. */
  static List<String> lines(SeasonAnswer answer) {
    return answer.plans().stream()
        .flatMap(plan -> plan.outline().lines().stream())
        .map(Outline.Line::name)
        .distinct()
        .toList();
  }

  /** Filled, with a fine line around. */
  static void bar(Graphics2D g, Rectangle2D bar, Paint paint) {
    g.setPaint(paint);
    g.fill(bar);
    g.setPaint(Palette.INK);
    g.setStroke(new BasicStroke(0.7f));
    g.draw(bar);
  }

  static Paint changeover() {
    return new Hatch(Color.WHITE, Palette.INK, Hatch.Kind.LEVEL);
  }

  /** Crops of all plans, in the order in which they are met. */
  static List<String> crops(SeasonAnswer answer) {
    return answer.plans().stream()
        .flatMap(plan -> plan.outline().crops().stream())
        .map(Outline.Crop::name)
        .distinct()
        .toList();
  }
}
