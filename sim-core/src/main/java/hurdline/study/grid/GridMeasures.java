package hurdline.study.grid;

import hurdline.answer.Outline;
import hurdline.answer.PaybackRow;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The measures by which a grid is drawn and its cells are set against each other. */
final class GridMeasures {
  private final Outline outline;
  private final boolean money;
  private final boolean bought;
  private final boolean plans;

  /**
   * @param money whether the plant counts money
   * @param bought whether some of the plants are options that are bought
   * @param plans whether the plants are season plans, which may leave crop over
   */
  GridMeasures(Outline outline, boolean money, boolean bought, boolean plans) {
    this.outline = outline;
    this.money = money;
    this.bought = bought;
    this.plans = plans;
  }

  /** What an option is worth against the first plant, whose own is 0. */
  static String worth() {
    return PaybackRow.Quantity.NET_PRESENT_VALUE.word();
  }

  /**
   * Those to be had most of: what options are worth, margin, with plans also less that forgone,
   * what each line feeds.
   */
  List<String> goals() {
    List<String> margin = new ArrayList<>();
    if (money && bought) {
      margin.add(worth());
    }
    if (money) {
      margin.add(Measure.MONEY_MARGIN.of());
    }
    if (money && plans) {
      margin.add(Measure.MONEY_MARGIN_LESS_FORGONE.of());
    }
    Stream<String> fed =
        outline.lines().stream().map(line -> Measure.MASS_FED.of(line.crop())).distinct();
    return Stream.concat(margin.stream(), fed).toList();
  }

  /** The goals, then what is left over of each line and the most that lies in the yard. */
  List<String> drawn() {
    Stream<String> left =
        outline.lines().stream().map(line -> Measure.SEASON_LEFT_OVER.of(line.name()));
    Stream<String> yard = outline.crops().stream().map(crop -> Measure.YARD_PEAK.of(crop.name()));
    return Stream.of(goals().stream(), left, yard).flatMap(all -> all).toList();
  }
}
