package hurdline.web;

import hurdline.answer.CheckAnswer;
import hurdline.chart.run.CheckCharts;
import hurdline.plant.ProblemsException;
import hurdline.service.PlantEdits;
import hurdline.service.PlantKeys;
import hurdline.service.PlantText;
import hurdline.service.Studies;
import hurdline.study.PlantChanges;
import hurdline.text.CheckHeadline;
import hurdline.text.UnitSystem;
import hurdline.text.Wording;
import hurdline.web.http.Ask;
import hurdline.web.http.Call;
import hurdline.web.http.Reply;
import java.io.IOException;
import java.text.NumberFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Stream;

/** What the page asks about a text while it is typed. */
final class TextCalls {
  private final Studies studies;
  private final PlantFolder folder;
  private final AtomicLong newest = new AtomicLong();
  private final Object checking = new Object();

  TextCalls(Studies studies, PlantFolder folder) {
    this.studies = studies;
    this.folder = folder;
  }

  /**
   * What is said of a text.
   *
   * @param older whether a newer text came meanwhile, so that nothing is said of this one
   * @param flows each line's drawing at its expected capacity
   * @param sentences what limits each line by formula; none where the plant has problems
   */
  record Checked(
      boolean older,
      List<TextProblem> problems,
      List<String> sentences,
      List<RatedLine> lines,
      List<Picture> flows) {
    static Checked wrong(boolean older, List<TextProblem> problems) {
      return new Checked(older, problems, List.of(), List.of(), List.of());
    }
  }

  Map<String, Call> all() {
    return Map.of(
        "POST check", this::check,
        "POST set", TextCalls::set,
        "POST figures", TextCalls::figures,
        "POST offers", TextCalls::offers,
        "POST meaning", TextCalls::meaning);
  }

  private Reply check(Ask ask) throws IOException {
    PlantText plant = PlantText.edited(folder.plant(ask.text("name")), ask.text("text"));
    long mine = newest.incrementAndGet();
    synchronized (checking) {
      if (mine != newest.get()) {
        return Reply.json(Checked.wrong(true, List.of()));
      }
      return Reply.json(checked(plant, ask));
    }
  }

  private Checked checked(PlantText plant, Ask ask) {
    String text = ask.text("text");
    try {
      CheckAnswer answer = studies.onPaper(plant, PlantChanges.base());
      Wording wording = wording(ask).reading(answer);
      return new Checked(
          false,
          TextProblem.of(answer.warnings(), text),
          new CheckHeadline(answer, wording).sentences(),
          RatedLine.of(answer, wording),
          CheckCharts.flows(answer, wording).stream().map(Picture::of).toList());
    } catch (ProblemsException wrong) {
      return Checked.wrong(false, TextProblem.of(wrong.problems(), text));
    }
  }

  /** For whom the page speaks; what a browser calls its language is one that Java knows or not. */
  static Wording wording(Ask ask) {
    boolean metric = ask.text("units").equals("metric");
    return new Wording(
        metric ? UnitSystem.METRIC : UnitSystem.US, Locale.forLanguageTag(ask.text("locale")));
  }

  /** Whether {@code --locale} takes a browser's word for its language. */
  static boolean isKnown(String locale) {
    Locale said = Locale.forLanguageTag(locale);
    return Stream.of(NumberFormat.getAvailableLocales()).anyMatch(said::equals)
        && !said.getLanguage().isEmpty();
  }

  private static Reply set(Ask ask) {
    try {
      return Reply.json(PlantEdits.setting(ask.text("text"), ask.text("path"), ask.text("value")));
    } catch (ProblemsException wrong) {
      return Reply.json(Map.of("refused", String.join(" ", wrong.lines())));
    }
  }

  private static Reply offers(Ask ask) {
    return Reply.json(PlantKeys.offers(ask.text("text"), offset(ask)));
  }

  private static Reply meaning(Ask ask) {
    return Reply.json(Map.of("said", PlantKeys.meaning(ask.text("text"), offset(ask)).orElse("")));
  }

  private static int offset(Ask ask) {
    return ask.whole("at", 0, ask.text("text").length());
  }

  private record Form(List<PlantEdits.Figure> figures, int others) {}

  private static Reply figures(Ask ask) {
    List<PlantEdits.Figure> figures = PlantEdits.figures(ask.text("text"));
    return Reply.json(new Form(figures, PlantEdits.values(ask.text("text")) - figures.size()));
  }
}
