package hurdline.text;

import hurdline.answer.BottleneckRow;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.SummaryRow;
import hurdline.measure.Measure;
import hurdline.unit.Counted;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The answer of a run in two to seven sentences that one could say aloud. */
public final class RunHeadline {
  private static final int LINES_TOLD = 2;
  private static final int SHORTEST_YEAR_D = 350;
  private static final int LONGEST_YEAR_D = 380;

  private final RunAnswer answer;
  private final Wording wording;
  private final Spoken spoken;
  private final SpokenNames names;
  private final SeasonRestWords rest;

  public RunHeadline(RunAnswer answer, Wording wording) {
    this.answer = answer;
    rest = new SeasonRestWords(answer, wording);
    this.wording = wording;
    this.spoken = new Spoken(wording);
    this.names = new SpokenNames(answer.outline().titles());
  }

  /**
   * When a season under way is done, what limits each line, what is left over, and what is earned.
   */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    List<Outline.Line> told = told();
    for (Outline.Line line : told) {
      LimitWords limits = limits(line);
      limits.sentence().ifPresent(sentences::add);
      limits
          .slowest()
          .flatMap(machine -> new BinBehind(answer).sentence(line.name(), machine))
          .ifPresent(sentences::add);
    }
    if (told.size() < answer.outline().lines().size()) {
      sentences.add("What limits the other lines stands in the table");
    }
    leftOver().ifPresent(sentences::add);
    margin().ifPresent(sentences::add);
    afterTax().ifPresent(sentences::add);
    if (sentences.size() < 2) {
      answer.outline().lines().stream().findFirst().flatMap(this::fed).ifPresent(sentences::add);
    }
    if (answer.header().replications() == 1) {
      sentences.add("This is one simulated year, and another may differ much");
    }
    return Stream.concat(
            rest.headline().stream(), sentences.stream().map(sentence -> sentence + "."))
        .toList();
  }

  /** All lines, or the two that are scheduled longest. */
  private List<Outline.Line> told() {
    List<Outline.Line> lines = answer.outline().lines();
    List<Outline.Line> longest =
        lines.stream()
            .sorted(Comparator.comparingDouble(this::scheduledH).reversed())
            .limit(LINES_TOLD)
            .toList();
    return lines.stream().filter(longest::contains).toList();
  }

  private double scheduledH(Outline.Line line) {
    return answer.holders().stream()
        .filter(row -> row.line().equals(line.name()))
        .mapToDouble(BottleneckRow::hours)
        .sum();
  }

  private LimitWords limits(Outline.Line line) {
    return new LimitWords(
        answer.holders(),
        line,
        answer.header().replications(),
        names,
        spoken,
        answer
            .capacity()
            .line(line.name())
            .map(capacity -> capacity.limits().expected().machines())
            .orElse(List.of()));
  }

  private Optional<String> leftOver() {
    List<String> left = new ArrayList<>();
    List<String> used = new ArrayList<>();
    for (Outline.Line line : told()) {
      answer
          .find(Measure.SEASON_LEFT_OVER.of(line.name()))
          .ifPresent(
              row -> {
                if (row.most() > 0) {
                  left.add(leftOver(line, row));
                } else {
                  used.add("the " + names.crop(line.crop()));
                }
              });
    }
    if (left.isEmpty()) {
      return used.isEmpty()
          ? Optional.empty()
          : Optional.of(
              "All of "
                  + CapacityWords.and(used.stream().distinct().toList())
                  + " is used when the season ends"
                  + lastOfIt());
    }
    return Optional.of(
        SpokenNames.upper(CapacityWords.and(left)) + " are left when the season ends");
  }

  /** {@code , the last stalk about 2028-01-25}: when the lines that are told are done. */
  private String lastOfIt() {
    if (answer.rest().isGiven()) {
      return ""; // which says it by itself
    }
    List<String> done = new ArrayList<>();
    for (Outline.Line line : told()) {
      answer
          .find(Measure.SEASON_ENDED.of(line.name()))
          .filter(row -> !Double.isNaN(row.mean()))
          .ifPresent(row -> done.add("the last " + names.crop(line.crop()) + " " + on(row)));
    }
    return done.isEmpty() ? "" : ", " + CapacityWords.and(done);
  }

  private String on(SummaryRow day) {
    String date = wording.date(answer.header().from().plusDays(Math.round(day.mean()) - 1));
    return (day.most() > day.least() ? "about " : "on ") + date;
  }

  private String leftOver(Outline.Line line, SummaryRow row) {
    String left = spoken.number(row.mean(), row.low95(), row.high95(), row.unit());
    String about = row.high95() > row.low95() ? "about " : "";
    return about + left + ofAll(line, row) + " " + row.unit() + " of " + names.crop(line.crop());
  }

  /** {@code of 7,100}: what was fed and what is left, where no other line is fed the same crop. */
  private String ofAll(Outline.Line line, SummaryRow left) {
    double all = answer.mean(Measure.INTAKE_FED.of(line.crop())) + left.mean();
    return answer.outline().isAlone(line) && all > 0
        ? " of " + spoken.number(all, all - all / 100, all + all / 100, left.unit())
        : "";
  }

  private Optional<String> margin() {
    return answer
        .find(Measure.MONEY_MARGIN.of())
        .map(
            row ->
                new EarningWords(spoken).earns(period(), row, answer.header().replications())
                    + new PoorYears(spoken).of(row));
  }

  /** What the lender and the tax office leave of it, where the file says what the plant cost. */
  private Optional<String> afterTax() {
    return answer
        .find(Measure.CASH_LEFT.of())
        .map(
            row ->
                "After loan and tax, before your accountant, "
                    + new EarningWords(spoken).leaves(period(), row)
                    + new PoorYears(spoken).of(row));
  }

  private Optional<String> fed(Outline.Line line) {
    return answer
        .find(Measure.MASS_FED.of(line.crop()))
        .map(
            row ->
                SpokenNames.upper(spoken.about(row.mean(), row.low95(), row.high95(), row.unit()))
                    + " of "
                    + names.crop(line.crop())
                    + " are fed");
  }

  private String period() {
    if (answer.rest().isGiven()) {
      return "the rest of the season";
    }
    long days = ChronoUnit.DAYS.between(answer.header().from(), answer.header().to()) + 1;
    return days >= SHORTEST_YEAR_D && days <= LONGEST_YEAR_D
        ? "the year"
        : "the calendar of " + Counted.of(days, spoken.about(days).replace("about ", ""), "day");
  }
}
