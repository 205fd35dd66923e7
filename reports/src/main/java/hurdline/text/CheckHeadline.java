package hurdline.text;

import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What limits each line by formula, in two to five sentences that one could say aloud. */
public final class CheckHeadline {
  private static final int LINES_TOLD = 2;

  private final CheckAnswer answer;
  private final Spoken spoken;
  private final SpokenNames names;

  public CheckHeadline(CheckAnswer answer, Wording wording) {
    this.answer = answer;
    this.spoken = new Spoken(wording);
    this.names = new SpokenNames(answer.outline().titles());
  }

  public List<String> sentences() {
    List<Capacity.Line> lines = answer.capacity().lines();
    List<Capacity.Line> longest =
        lines.stream()
            .sorted(Comparator.comparingDouble(Capacity.Line::scheduledHours).reversed())
            .limit(LINES_TOLD)
            .toList();
    List<String> sentences = new ArrayList<>();
    lines.stream().filter(longest::contains).forEach(line -> sentences.add(limit(line)));
    if (lines.size() > LINES_TOLD) {
      sentences.add("What limits the other lines stands below");
    }
    orders().ifPresent(sentences::add);
    sentences.add("Queues, the yard and the weather come on top; a run simulates them");
    return sentences.stream().map(sentence -> SpokenNames.upper(sentence) + ".").toList();
  }

  private String limit(Capacity.Line line) {
    Capacity.Limit expected = line.limits().expected();
    Capacity.Limit rated = line.limits().rated();
    if (Double.isNaN(expected.fedTPerH())) {
      return "nothing limits " + names.line(line.line()) + " by formula";
    }
    return by(expected)
        + (expected.machines().size() > 1 ? " limit " : " limits ")
        + names.line(line.line())
        + " to "
        + amount(expected)
        + " with mean stops and changes"
        + (Double.isNaN(rated.fedTPerH())
            ? ""
            : ", and "
                + (by(rated).equals(by(expected)) ? "" : by(rated) + " ")
                + "to "
                + amount(rated)
                + " if nothing ever stopped");
  }

  private String by(Capacity.Limit limit) {
    return limit.resource().isEmpty()
        ? names.machines(limit.machines())
        : "the wait for " + names.resource(limit.resource());
  }

  private String amount(Capacity.Limit limit) {
    return spoken.amount(limit.fedTPerH(), Double.NaN, Double.NaN, "t/h");
  }

  private Optional<String> orders() {
    List<Capacity.Orders> orders = answer.capacity().orders();
    if (orders.stream().anyMatch(of -> !(of.share() <= 1))) {
      return Optional.of("not all orders can be met");
    }
    return orders.stream().anyMatch(of -> !of.firstLate().isEmpty())
        ? Optional.of("some orders cannot be met in time")
        : Optional.empty();
  }
}
