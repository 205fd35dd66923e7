package hurdline.chart.flow;

import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.SvgCanvas;
import java.awt.Font;
import java.awt.Graphics2D;
import java.util.List;

/** A title over a box of the flow drawing: on one line, or a long one in smaller letters on two. */
final class BoxTitle {
  private static final double LONG = 130;
  private static final int SIZE = 12;
  private static final int SMALL = 10;

  private final List<String> lines;

  BoxTitle(String title) {
    lines = width(title, SIZE) > LONG && title.contains(" ") ? halves(title) : List.of(title);
  }

  /** Broken at the space that leaves the shorter longest line. */
  private static List<String> halves(String title) {
    List<String> best = List.of();
    for (int at = title.indexOf(' '); at >= 0; at = title.indexOf(' ', at + 1)) {
      List<String> halves = List.of(title.substring(0, at), title.substring(at + 1));
      if (best.isEmpty() || widest(halves, SMALL) < widest(best, SMALL)) {
        best = halves;
      }
    }
    return best;
  }

  private static double widest(List<String> lines, int size) {
    return lines.stream().mapToDouble(line -> width(line, size)).max().orElse(0);
  }

  private static double width(String line, int size) {
    return SvgCanvas.metrics(Fonts.bold(size)).stringWidth(line);
  }

  double width() {
    return widest(lines, lines.size() == 1 ? SIZE : SMALL);
  }

  /** Where what stands under the title goes, below the top of the box. */
  double below() {
    return lines.size() == 1 ? 30 : 33;
  }

  void draw(Graphics2D g, boolean bold, double x, double top) {
    int size = lines.size() == 1 ? SIZE : SMALL;
    Font font = bold ? Fonts.bold(size) : Fonts.of(size);
    if (lines.size() == 1) {
      FlowDiagram.centred(g, font, lines.get(0), x, top + 16);
    } else {
      FlowDiagram.centred(g, font, lines.get(0), x, top + 11);
      FlowDiagram.centred(g, font, lines.get(1), x, top + 21);
    }
  }
}
