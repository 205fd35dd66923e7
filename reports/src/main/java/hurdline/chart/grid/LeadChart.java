package hurdline.chart.grid;

import hurdline.answer.GridAnswer;
import hurdline.answer.GridCell;
import hurdline.answer.GridLead;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.ChartStyle;
import hurdline.chart.kit.Fonts;
import hurdline.chart.kit.Palette;
import hurdline.chart.kit.SvgCanvas;
import hurdline.text.GridWords;
import hurdline.text.KeyWords;
import hurdline.text.LeadWords;
import hurdline.text.Wording;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Which plant is the best in each cell of a grid of two keys: a letter and a pattern for each
 * plant.
 */
final class LeadChart {
  private final GridAnswer answer;
  private final String label;
  private final String measure;
  private final KeyWords keys;
  private final Map<Integer, GridLead> leads = new HashMap<>();

  LeadChart(GridAnswer answer, String measure, Wording wording) {
    this.answer = answer;
    this.measure = measure;
    keys = new KeyWords(answer, wording);
    label = new GridWords(answer, wording).label(measure);
    new LeadWords(answer, wording).of(measure).forEach(lead -> leads.put(lead.cell(), lead));
  }

  Chart figure() {
    String title = "Which " + answer.called() + " is best by " + label;
    String name = "best-" + measure;
    TilePlan plan = new TilePlan(answer, keys);
    int height = (int) Math.ceil(plan.bottom() + 20 + 22 * answer.plants().size());
    SvgCanvas canvas = new SvgCanvas(name, ChartStyle.widthPx(), height);
    Graphics2D g = canvas.onWhite();
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      drawTile(g, plan.tile(cell), cell);
    }
    plan.drawAxes(g);
    drawLegend(g, plan);
    return new Chart(name, title, alternative(), canvas.finish(title, alternative()), table());
  }

  private void drawTile(Graphics2D g, Rectangle2D tile, int cell) {
    GridLead lead = leads.get(cell);
    if (lead == null) {
      TilePlan.drawLeftOut(g, tile);
      return;
    }
    g.setPaint(Palette.series(answer.plants().indexOf(lead.plant())));
    g.fill(tile);
    TilePlan.drawEdge(g, tile);
    drawLetter(g, tile, letter(lead));
    if (answer.cells().get(cell).asItStands()) {
      TilePlan.drawFrame(g, tile, Palette.INK, 2, null);
    }
  }

  private static void drawLetter(Graphics2D g, Rectangle2D tile, String letter) {
    Rectangle2D box = new Rectangle2D.Double(tile.getCenterX() - 14, tile.getCenterY() - 9, 28, 18);
    g.setPaint(Color.WHITE);
    g.fill(box);
    g.setPaint(Palette.INK);
    TilePlan.drawFitting(g, letter, box, 12);
  }

  private String letter(GridLead lead) {
    boolean told = answer.header().replications() > 1 && lead.alike().isEmpty();
    return letter(answer.plants().indexOf(lead.plant())) + (told ? "" : "?");
  }

  private static String letter(int plant) {
    return String.valueOf((char) ('A' + plant % 26));
  }

  private void drawLegend(Graphics2D g, TilePlan plan) {
    double top = plan.bottom() + 4;
    for (int plant = 0; plant < answer.plants().size(); plant++) {
      Rectangle2D box = new Rectangle2D.Double(plan.left(), top + 22 * plant, 44, 20);
      g.setPaint(Palette.series(plant));
      g.fill(box);
      drawLetter(g, box, letter(plant));
      g.setFont(Fonts.of(12));
      g.drawString(
          keys.plantTitle(answer.plants().get(plant)),
          (float) (plan.left() + 52),
          (float) (top + 22 * plant + 14));
    }
    g.setFont(Fonts.of(11));
    g.drawString(marks(), (float) plan.left(), (float) (top + 22 * answer.plants().size() + 12));
  }

  private String marks() {
    String frame =
        answer.cells().stream().anyMatch(GridCell::asItStands) ? "; framed: as it stands" : "";
    return "?: no significant difference from another" + frame;
  }

  private String alternative() {
    List<String> said = new ArrayList<>();
    leads.keySet().stream()
        .sorted()
        .forEach(cell -> said.add(keys.cell(cell) + ": " + said(leads.get(cell))));
    return "Tiles of the "
        + answer.called()
        + " that is best by "
        + label
        + ". "
        + String.join("; ", said)
        + ".";
  }

  private String said(GridLead lead) {
    return keys.plant(lead.plant())
        + (lead.alike().isEmpty()
            ? ""
            : ", no significant difference from " + keys.plants(lead.alike()));
  }

  private Chart.Grid table() {
    List<String> head =
        List.of(keys.name(0), keys.name(1), "best by " + label, "no significant difference from");
    List<List<String>> rows = new ArrayList<>();
    for (int cell = 0; cell < answer.cells().size(); cell++) {
      GridLead lead = leads.get(cell);
      rows.add(
          List.of(
              keys.value(cell, 0),
              keys.value(cell, 1),
              lead == null ? "left out" : keys.plantTitle(lead.plant()),
              lead == null ? "" : keys.plants(lead.alike())));
    }
    return new Chart.Grid(head, rows);
  }
}
