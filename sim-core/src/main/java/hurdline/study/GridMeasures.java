package hurdline.study;

import hurdline.answer.Outline;
import hurdline.answer.PaybackRow;
import hurdline.measure.Measure;
import java.util.List;
import java.util.stream.Stream;

/** The measures by which a grid is drawn and its cells are set against each other. */
final class GridMeasures {
  private final Outline outline;
  private final boolean money;
  private final boolean bought;

  /**
   * @param money whether the plant counts money
   * @param bought whether some of the plants are options that are bought
   */
  GridMeasures(Outline outline, boolean money, boolean bought) {
    this.outline = outline;
    this.money = money;
    this.bought = bought;
  }

  /** What an option is worth against the first plant, whose own is 0. */
  static String worth() {
    return PaybackRow.Quantity.NET_PRESENT_VALUE.word();
  }

  /** Those to be had most of: what options are worth, margin, and what each line feeds. */
  List<String> goals() {
    Stream<String> margin =
        !money
            ? Stream.empty()
            : bought
                ? Stream.of(worth(), Measure.MONEY_MARGIN.of())
                : Stream.of(Measure.MONEY_MARGIN.of());
    Stream<String> fed =
        outline.lines().stream().map(line -> Measure.MASS_FED.of(line.crop())).distinct();
    return Stream.concat(margin, fed).toList();
  }

  /** The goals, then what is left over of each line and the most that lies in the yard. */
  List<String> drawn() {
    Stream<String> left =
        outline.lines().stream().map(line -> Measure.SEASON_LEFT_OVER.of(line.name()));
    Stream<String> yard =
        outline.crops().stream().map(crop -> Measure.YARD_PEAK.of(crop.name()));
    return Stream.of(goals().stream(), left, yard).flatMap(all -> all).toList();
  }
}
