package hurdline.text;

import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.answer.RunAnswer;
import hurdline.answer.Titles;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The answer of a run for the terminal: what one would say of it, the main figures as a table, and
 * what else is worth knowing.
 */
public final class RunWords {
  private final RunAnswer answer;
  private final Wording wording;

  public RunWords(RunAnswer answer, Wording wording) {
    this.answer = answer;
    this.wording = wording;
  }

  /**
   * What the terminal shows.
   *
   * @param width columns that a line of the table may have
   */
  public List<String> lines(int width) {
    MainTable table = RunTable.of(answer, wording);
    List<String> lines = new ArrayList<>();
    lines.add(title());
    lines.addAll(new RunHeadline(answer, wording).sentences());
    lines.addAll(new SeasonRestWords(answer, wording).notes());
    lines.add("");
    lines.addAll(table.lines(width));
    lines.add("");
    for (Outline.Line line : answer.outline().lines()) {
      next(line.name())
          .ifPresent(
              next ->
                  lines.add(
                      "next        "
                          + Titles.inText(answer.outline().titles().line(line.name()))
                          + ": "
                          + next));
    }
    new TonWords(answer, wording)
        .sentences()
        .forEach(sentence -> lines.add("unit cost   " + sentence + "."));
    new CashWords(answer, wording)
        .sentence()
        .ifPresent(sentence -> lines.add("loan        " + sentence + "."));
    new OrderWords(answer.capacity(), wording)
        .warnings()
        .forEach(warning -> lines.add("warning     " + warning));
    new OrderRecord(answer, wording)
        .sentences()
        .forEach(sentence -> lines.add("order       " + sentence));
    tell(lines, "cleanliness", new CleanlinessWords(answer.summary(), wording.titles(), wording));
    tell(lines, "market", new MarketWords(answer.summary(), wording));
    tell(lines, "purchases", new PurchaseWords(answer.summary(), wording));
    tell(lines, "purge", new PurgeWords(answer.summary(), wording));
    tell(lines, "moisture", new YardMoistureWords(answer.summary(), wording));
    tell(lines, "covers", new CoverWords(answer.summary(), wording));
    tell(lines, "hands", new HandsWords(answer.summary(), wording));
    tell(lines, "limits", new PlaceLimitWords(answer.summary(), wording));
    DrawnCropWords.of(answer, wording)
        .clauses()
        .forEach(clause -> lines.add("drawn crop  " + clause));
    lines.add(table.legend(answer.header().replications()));
    if (answer.header().replications() > 1) {
      new InputWords(answer.inputs(), answer.outline(), wording).sentences().forEach(lines::add);
    }
    return lines;
  }

  private static void tell(List<String> lines, String about, RowSentences words) {
    words
        .sentences()
        .forEach(sentence -> lines.add(String.format(Locale.ROOT, "%-12s%s.", about, sentence)));
  }

  String title() {
    Header header = answer.header();
    TitleWords title = new TitleWords(header, wording);
    return header.plant()
        + ", "
        + wording.titles().option(header.option())
        + title.changes()
        + ", "
        + title.simulated();
  }

  private Optional<String> next(String line) {
    return answer
        .capacity()
        .line(line)
        .flatMap(capacity -> new CapacityWords(capacity, wording).next())
        .map(next -> next + "; compare --gain simulates 10 % more");
  }
}
