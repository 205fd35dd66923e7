package hurdline.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;

/** All checks that the answer of a command goes through, and what is asserted of them. */
final class Audit {
  private final List<Check> checks;
  private final Map<String, Check> owners =
      new HashMap<>(); // which check makes each kind of comparison

  private Audit(List<Check> checks) {
    this.checks = checks;
  }

  private Audit(Check... more) {
    checks =
        new ArrayList<>(
            List.of(
                new SummaryCheck(),
                new HoursCheck(),
                new MassCheck(),
                new EnergyCheck(),
                new MoneyCheck(),
                new RecordCheck(),
                new TerminalCheck()));
    checks.addAll(List.of(more));
  }

  static Audit ofRun() {
    return new Audit(
        new PeriodCheck(),
        new AdjustedCheck(),
        new OrderCheck(),
        new StoreCheck(),
        new SentenceCheck(),
        new RunPageCheck());
  }

  static Audit ofComparison() {
    return new Audit(
        new PeriodCheck(),
        new AdjustedCheck(),
        new DifferenceCheck(),
        new BottleneckCheck(),
        new WorthCheck(),
        new ComparePageCheck());
  }

  /**
   * @param without a run of the first plan without its first changeover
   */
  static Audit ofSeason(WrittenAnswer without) {
    return new Audit(
        new PeriodCheck(),
        new AdjustedCheck(),
        new DifferenceCheck(),
        new PlanCheck(),
        new ChangeoverCheck(without),
        new SeasonPageCheck());
  }

  /**
   * @param ownRuns runs with some of the sizes, by bales
   */
  static Audit ofYard(Map<Integer, WrittenAnswer> ownRuns) {
    return new Audit(new YardSizeCheck(ownRuns), new YardPageCheck());
  }

  /** Of plans by their margin, without bounds and draws; such an answer has no measures.csv. */
  static Audit ofChoice(Path plant) {
    return new Audit(List.of(new ChoiceCheck(plant), new ChoicePageCheck(), new TerminalCheck()));
  }

  /**
   * @param ownRuns with the inputs of each row of the draws
   */
  static Audit ofInputs(List<WrittenAnswer> ownRuns) {
    return new Audit(List.of(new InputPlantsCheck(ownRuns)));
  }

  /** The kinds of comparison of a choice. */
  static Set<String> kindsOfChoice() {
    return Set.of(
        ChoiceCheck.CHOSEN,
        ChoiceCheck.EFFECTS,
        ChoiceCheck.ROUNDS,
        ChoiceCheck.FRONTIER,
        PageBook.PAGE,
        TerminalCheck.TERMINAL);
  }

  Ledger of(WrittenAnswer answer) {
    Ledger ledger = new Ledger();
    for (Check check : checks) {
      Ledger own = new Ledger();
      check.compare(answer, own);
      own.counts().keySet().forEach(what -> owners.put(what, check));
      ledger.add(own);
    }
    return ledger;
  }

  /**
   * Asserts that all figures agree, and that none of the comparisons was left out: each kind has a
   * least count.
   *
   * @param least by kind of comparison; all kinds of this answer and no others
   */
  void closes(WrittenAnswer answer, Map<String, Integer> least) {
    Ledger ledger = of(answer);
    assertThat(ledger.mismatches()).as(ledger.listed()).isEmpty();
    assertThat(ledger.counts()).containsOnlyKeys(least.keySet());
    least.forEach(
        (what, count) -> assertThat(ledger.compared(what)).as(what).isGreaterThanOrEqualTo(count));
  }

  /** The same with a least count of all kinds together, and at least one of each. */
  void closes(WrittenAnswer answer, Set<String> kinds, int figures) {
    Map<String, Integer> least = new HashMap<>();
    kinds.forEach(what -> least.put(what, 1));
    closes(answer, least);
    assertThat(of(answer).comparedInAll()).isGreaterThanOrEqualTo(figures);
  }

  /** Asserts that one kind of comparison finds a fault that was put into an answer. */
  void notices(String what, WrittenAnswer sound, UnaryOperator<WrittenAnswer> fault) {
    if (owners.isEmpty()) {
      of(sound);
    }
    Ledger ledger = new Ledger();
    owners.get(what).compare(fault.apply(sound), ledger);
    assertThat(ledger.mismatches()).as(what).anyMatch(line -> line.startsWith(what + ": "));
  }
}
