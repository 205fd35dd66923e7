package hurdline.chart;

import hurdline.answer.LevelRow;
import hurdline.answer.YardAnswer;
import hurdline.words.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The charts of a yard's sizing, by the question they answer. */
public final class YardFigures {
  private final YardAnswer answer;
  private final Wording wording;
  private final Once<List<Figure>> grounds = new Once<>(this::drawGrounds);
  private final Once<List<Figure>> acres = new Once<>(this::drawAcres);
  private final Once<List<Figure>> gains = new Once<>(this::drawGains);
  private final Once<List<Figure>> levels = new Once<>(this::drawLevels);
  private final Once<List<Figure>> money = new Once<>(this::drawMoney);
  private final Once<List<Figure>> effects = new Once<>(this::drawEffects);
  private final Once<List<Figure>> overflow = new Once<>(this::drawOverflow);
  private final Once<List<Figure>> peaks = new Once<>(this::drawPeaks);

  public YardFigures(YardAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /** How the peak differs from season to season. */
  public List<Figure> peaks() {
    return peaks.get();
  }

  private List<Figure> drawPeaks() {
    return List.of(new PeakChart(answer, wording).figure());
  }

  /** The chance that each size overflows. */
  public List<Figure> overflow() {
    return overflow.get();
  }

  private List<Figure> drawOverflow() {
    return answer.capacity().isEmpty() ? List.of() : List.of(new CapacityCharts(answer, wording).overflow());
  }

  /** What each size holds back and what wastes away. */
  public List<Figure> effects() {
    return effects.get();
  }

  private List<Figure> drawEffects() {
    return answer.capacity().isEmpty() ? List.of() : List.of(new CapacityCharts(answer, wording).effects());
  }

  /** What each size costs. */
  public List<Figure> money() {
    return money.get();
  }

  private List<Figure> drawMoney() {
    return answer.cheapest().isEmpty() ? List.of() : List.of(new CapacityCharts(answer, wording).money());
  }

  /** The yard without limit through the year, all places and each. */
  public List<Figure> levels() {
    return levels.get();
  }

  private List<Figure> drawLevels() {
    List<String> places =
        answer.levels().stream()
            .filter(row -> row.crop().equals(answer.asked().crop()))
            .map(LevelRow::place)
            .distinct()
            .toList();
    List<Figure> figures = new ArrayList<>();
    figures.add(level("*"));
    if (places.size() > 2) {
      places.stream().filter(place -> !place.equals("*")).forEach(place -> figures.add(level(place)));
    }
    return figures;
  }

  private Figure level(String place) {
    String crop = answer.asked().crop();
    List<LevelRow> levels =
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
    return new YardChart(answer.header(), name, title, levels, holds, wording).figure();
  }

  /** How surely seasons finish with more or fewer acres. */
  public List<Figure> acres() {
    return acres.get();
  }

  private List<Figure> drawAcres() {
    return answer.acres().isEmpty() ? List.of() : List.of(new AcresChart(answer, wording).figure());
  }

  /** What shortens the peak. */
  public List<Figure> gains() {
    return gains.get();
  }

  private List<Figure> drawGains() {
    return answer.gains().isEmpty() ? List.of() : List.of(new ShorterPeakChart(answer, wording).figure());
  }

  /** The stacks of each place from above. */
  public List<Figure> grounds() {
    return grounds.get();
  }

  private List<Figure> drawGrounds() {
    return answer.grounds().stream().map(plan -> new GroundChart(answer, plan, wording).figure()).toList();
  }

  /** Every chart, in the order of the report. */
  public List<Figure> all() {
    return Stream.of(overflow(), peaks(), effects(), money(), gains(), acres(), grounds(), levels()).flatMap(List::stream).toList();
  }
}
