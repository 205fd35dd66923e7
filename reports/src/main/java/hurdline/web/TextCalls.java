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
import java.util.stream.Stream;

/** What the page asks about a text while it is typed. */
final class TextCalls {
  private final Studies studies;
  private final PlantFolder folder;
  private final NewestAsk newest = new NewestAsk();

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
    PlantText plant = folder.typed(ask.text("text"));
    return newest.answer(
        ask.text("page"),
        isOlder -> Reply.json(checked(plant, ask)),
        Reply.json(Checked.wrong(true, List.of())));
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

  /** A word in a figure's place would take the figure, and so its box, out of the form. */
  private static Reply set(Ask ask) {
    String value = ask.text("value");
    if (!PlantEdits.isFigure(value)) {
      for (PlantEdits.Figure now : PlantEdits.figures(ask.text("text"))) {
        if (now.path().equals(ask.text("path"))) {
          String said = value.isEmpty() ? "Nothing" : "\"" + value + "\"";
          return Reply.json(
              Map.of("refused", said + " is no figure; expected one such as " + now.text() + "."));
        }
      }
    }
    try {
      return Reply.json(PlantEdits.setting(ask.text("text"), ask.text("path"), value));
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
