package hurdline.text;

import hurdline.answer.Capacity;
import hurdline.answer.Titles;
import hurdline.measure.Cause;
import java.util.List;
import java.util.Optional;

/** What limits a line by rated and expected capacity, and what would limit it next. */
public final class CapacityWords {
  private final Capacity.Line line;
  private final Wording wording;

  public CapacityWords(Capacity.Line line, Wording wording) {
    this.line = line;
    this.wording = wording;
  }

  /**
   * {@code 2.13 ton/h by the mill: 3,915 ton in 1,840 scheduled hours, if nothing ever stopped}.
   */
  public String rated() {
    Capacity.Limit rated = line.limits().rated();
    return limit(rated)
        + ": "
        + wording.amount(rated.fedTPerH() * line.scheduledHours(), "t")
        + " in "
        + wording.number(line.scheduledHours(), Double.NaN, Double.NaN, "h")
        + " scheduled hours, if nothing ever stopped";
  }

  public String expected() {
    Capacity.Limit expected = line.limits().expected();
    String together =
        expected.machines().size() > 1 && !areTwins(expected.machines())
            ? ", which stop together as no bin lies between them"
            : "";
    return limit(expected)
        + together
        + ": "
        + wording.amount(expected.fedTPerH() * line.scheduledHours(), "t")
        + " with mean stops and changes";
  }

  /** Twins are alike in every figure, and in parallel. */
  private boolean areTwins(List<String> machines) {
    List<Capacity.Machine> named =
        line.machines().stream().filter(machine -> machines.contains(machine.machine())).toList();
    return named.size() == machines.size()
        && named.stream().map(Capacity.Machine::expectedTPerH).distinct().count() == 1
        && named.stream().map(Capacity.Machine::kind).distinct().count() == 1;
  }

  /**
   * {@code if the mill did not limit: at most 3.01 ton/h by the hurd bagger expected (69 % more),
   * ...}; empty where the bottleneck has no capacity that could be raised.
   */
  public Optional<String> next() {
    return line.limits().next().stream()
        .findFirst()
        .map(
            next ->
                "if "
                    + freed(next)
                    + " did not limit: at most "
                    + change(line.limits().expected(), next.expected(), "expected")
                    + ", "
                    + change(line.limits().rated(), next.rated(), "rated"));
  }

  private String freed(Capacity.Next next) {
    return switch (Cause.kindOf(next.cause())) {
      case RESOURCE -> "waits for " + and(next.freed().stream().map(this::resource).toList());
      case LIFT -> "lifts to the table";
      default -> machines(next.freed());
    };
  }

  private String change(Capacity.Limit now, Capacity.Limit then, String which) {
    if (Double.isNaN(then.fedTPerH())) {
      return "without a limit " + which;
    }
    String percent = wording.fixed(then.fedTPerH() / now.fedTPerH() - 1, 0, "share");
    String more = percent.equals("0") ? "no more" : percent + " % more";
    return limit(then) + " " + which + " (" + more + ")";
  }

  private String limit(Capacity.Limit limit) {
    String by =
        limit.resource().isEmpty() ? machines(limit.machines()) : resource(limit.resource());
    return Double.isNaN(limit.fedTPerH())
        ? "without a limit"
        : wording.fixed(limit.fedTPerH(), 2, "t/h") + " " + wording.unit("t/h") + " by " + by;
  }

  private String machines(List<String> names) {
    return and(names.stream().map(wording.titles()::machineInText).toList());
  }

  private String resource(String name) {
    return "the " + Titles.inText(wording.titles().resource(name));
  }

  /** {@code a, b and c}. */
  static String and(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " and " + names.get(last);
  }
}
