package hurdline.chart.yard;

import hurdline.answer.YardAnswer;
import hurdline.answer.YardLevelRow;
import hurdline.chart.kit.Chart;
import hurdline.chart.kit.Memoized;
import hurdline.chart.run.LevelChart;
import hurdline.text.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a yard's sizing, by the question they answer. */
public final class YardCharts {
  private final YardAnswer answer;
  private final Wording wording;
  private final Memoized<List<Chart>> grounds = new Memoized<>(this::drawGrounds);
  private final Memoized<List<Chart>> acres = new Memoized<>(this::drawAcres);
  private final Memoized<List<Chart>> gains = new Memoized<>(this::drawGains);
  private final Memoized<List<Chart>> levels = new Memoized<>(this::drawLevels);
  private final Memoized<List<Chart>> money = new Memoized<>(this::drawMoney);
  private final Memoized<List<Chart>> effects = new Memoized<>(this::drawEffects);
  private final Memoized<List<Chart>> overflow = new Memoized<>(this::drawOverflow);
  private final Memoized<List<Chart>> peaks = new Memoized<>(this::drawPeaks);

  public YardCharts(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** How the peak differs from season to season. */
  public List<Chart> peaks() {
    return peaks.get();
  }

  private List<Chart> drawPeaks() {
    return List.of(new PeakChart(answer, wording).figure());
  }

  /** The chance that each size overflows. */
  public List<Chart> overflow() {
    return overflow.get();
  }

  private List<Chart> drawOverflow() {
    return answer.capacity().isEmpty()
        ? List.of()
        : List.of(new YardSizeCharts(answer, wording).overflow());
  }

  /** What each size holds back and what wastes away. */
  public List<Chart> effects() {
    return effects.get();
  }

  private List<Chart> drawEffects() {
    return answer.capacity().isEmpty()
        ? List.of()
        : List.of(new YardSizeCharts(answer, wording).effects());
  }

  /** What each size costs. */
  public List<Chart> money() {
    return money.get();
  }

  private List<Chart> drawMoney() {
    return answer.cheapest().isEmpty()
        ? List.of()
        : List.of(new YardSizeCharts(answer, wording).money());
  }

  /** The yard without limit through the year, all places and each. */
  public List<Chart> levels() {
    return levels.get();
  }

  private List<Chart> drawLevels() {
    List<String> places =
        answer.levels().stream()
            .filter(row -> row.crop().equals(answer.asked().crop()))
            .map(YardLevelRow::place)
            .distinct()
            .toList();
    List<Chart> figures = new ArrayList<>();
    figures.add(level("*"));
    if (places.size() > 2) {
      places.stream()
          .filter(place -> !place.equals("*"))
          .forEach(place -> figures.add(level(place)));
    }
    return figures;
  }

  private Chart level(String place) {
    String crop = answer.asked().crop();
    List<YardLevelRow> levels =
        answer.levels().stream()
            .filter(row -> row.crop().equals(crop) && row.place().equals(place))
            .toList();
    boolean all = place.equals("*");
    double holds =
        all
            ? answer.asked().holds()
            : answer.outline().places().stream()
                .filter(p -> p.name().equals(place))
                .mapToDouble(p -> p.holds())
                .sum();
    String title =
        all
            ? wording.titles().crop(crop) + " in the yard without limit"
            : wording.titles().crop(crop)
                + " in "
                + wording.titles().placeInText(place)
                + (place.equals(answer.asked().place()) ? " without limit" : "");
    String name = all ? "yard-" + crop : "yard-" + crop + "-" + place;
    return LevelChart.yard(answer.header(), name, title, levels, holds, wording).figure();
  }

  /** How surely seasons finish with more or fewer acres. */
  public List<Chart> acres() {
    return acres.get();
  }

  private List<Chart> drawAcres() {
    return answer.acres().isEmpty() ? List.of() : List.of(new AcresChart(answer, wording).figure());
  }

  /** What shortens the peak. */
  public List<Chart> gains() {
    return gains.get();
  }

  private List<Chart> drawGains() {
    return answer.gains().isEmpty()
        ? List.of()
        : List.of(new ShorterPeakChart(answer, wording).figure());
  }

  /** The stacks of each place from above. */
  public List<Chart> grounds() {
    return grounds.get();
  }

  private List<Chart> drawGrounds() {
    return answer.grounds().stream()
        .map(plan -> new GroundChart(answer, plan, wording).figure())
        .toList();
  }

  /** Every chart, in the order of the report. */
  public List<Chart> all() {
    return Stream.of(overflow(), peaks(), effects(), money(), gains(), acres(), grounds(), levels())
        .flatMap(List::stream)
        .toList();
  }
}
