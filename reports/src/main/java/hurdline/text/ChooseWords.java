package hurdline.text;

import hurdline.answer.ChoiceRange;
import hurdline.answer.ChoiceRow;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.FrontierRow;
import hurdline.answer.Header;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The answer of a choice among very many plans for the terminal. */
public final class ChooseWords {
  private final ChooseAnswer answer;
  private final Wording wording;
  private final ChoiceWords words;

  public ChooseWords(ChooseAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
    words = new ChoiceWords(answer, wording);
  }

  /**
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new ChooseHeadline(answer, wording).sentences());
    lines.add("");
    lines.addAll(ChooseTable.of(answer, wording).lines(width));
    lines.add("");
    sentences().forEach(sentence -> lines.add(sentence.substring(0, sentence.length() - 1)));
    lines.add(legend());
    return lines;
  }

  private String title() {
    Header header = answer.header();
    return header.plant()
        + ", "
        + wording.count(answer.plans().size())
        + " plans"
        + new TitleWords(header, wording).changes()
        + ", "
        + wording.span(header.from(), header.to())
        + ", seed "
        + header.seed();
  }

  /** What the figures of the table are. */
  public String legend() {
    return "Means and differences are those of "
        + wording.count(answer.header().replications())
        + " last years, which neither chose nor judged any plan; their intervals are each for itself.";
  }

  /** What became of the other plans, and what each budget buys. */
  public List<String> sentences() {
    List<String> sentences = new ArrayList<>();
    sentences.add(others());
    answer.frontier().stream().skip(1).map(this::budget).forEach(sentences::add);
    for (int choice = 0; choice < answer.choices().size(); choice++) {
      end(choice).ifPresent(sentences::add);
    }
    return sentences;
  }

  /** What rises up to the first or the last value of a key may rise on beyond it. */
  private Optional<String> end(int choice) {
    ChoiceRange range = answer.choices().get(choice);
    int last = range.values().size() - 1;
    int at = answer.plans().get(answer.best().plan()).at().get(choice);
    if (!range.kind().equals("key") || last < 2 || at != 0 && at != last) {
      return Optional.empty();
    }
    int before = at == 0 ? 1 : last - 1;
    return answer.effects().stream()
        .filter(effect -> effect.choice() == choice && effect.value() == before)
        .filter(effect -> effect.high95() < 0)
        .findFirst()
        .map(
            effect ->
                Titles.capital(words.valued(choice, at))
                    + " is an end of its values, and beyond it may be more.");
  }

  private String others() {
    List<String> parts = new ArrayList<>();
    add(
        parts,
        answer.best().left() - 1L,
        answer.terms().independent()
            ? "were simulated as long as their spread asked for"
            : "more may be the best");
    add(parts, answer.count(ChoiceRow.Status.OUT), "were judged to be below it");
    add(parts, answer.count(ChoiceRow.Status.NEVER), "are left out by the file");
    add(parts, answer.count(ChoiceRow.Status.BOUND), "do not meet a bound in enough years");
    add(
        parts,
        answer.count(ChoiceRow.Status.PROBLEM),
        "cannot be simulated; screened_out.csv says why");
    return "Of the others " + String.join(", ", parts) + ".";
  }

  private void add(List<String> parts, long count, String what) {
    if (count > 0) {
      parts.add(wording.count(count) + " " + (count == 1 ? singular(what) : what));
    }
  }

  private static String singular(String what) {
    return what.replaceFirst("^were ", "was ")
        .replaceFirst("^are ", "is ")
        .replaceFirst("^do not ", "does not ");
  }

  private String budget(FrontierRow row) {
    String at = "With at most " + wording.asGiven(row.budget(), answer.header().currency());
    if (row.plan() < 0) {
      return at + " there is no plan.";
    }
    return at + ": " + words.plan(row.plan()) + certain(row) + ".";
  }

  private String certain(FrontierRow row) {
    if (row.of() == 1) {
      return ", the only plan";
    }
    return Double.isNaN(row.gap())
        ? "; how far below the best cannot be stated"
        : "; none of "
            + wording.count(row.of())
            + " plans is more than "
            + words.atMost(row.gap())
            + " above it";
  }
}
