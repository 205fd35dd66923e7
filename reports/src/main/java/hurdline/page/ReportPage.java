package hurdline.page;

import hurdline.answer.Answer;
import hurdline.answer.BacktestAnswer;
import hurdline.answer.CheckAnswer;
import hurdline.answer.ChooseAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.Header;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.chart.choose.ChooseCharts;
import hurdline.chart.compare.CompareCharts;
import hurdline.chart.fit.FitCharts;
import hurdline.chart.fit.SeasonCharts;
import hurdline.chart.grid.GridCharts;
import hurdline.chart.kit.Chart;
import hurdline.chart.run.RunCharts;
import hurdline.chart.season.PlanCharts;
import hurdline.chart.yard.YardCharts;
import hurdline.text.ChangeWords;
import hurdline.text.KeyWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The report as one HTML file: no script, no link to anywhere, its styles and drawings inside. */
public final class ReportPage {
  private ReportPage() {}

  /** The page of an answer; the same answer and wording give the same bytes. */
  public static String html(Answer answer, Wording plain) {
    Wording wording = plain.reading(answer);
    if (answer instanceof RunAnswer run) {
      return html(run, wording, new RunCharts(run, wording));
    }
    if (answer instanceof FitAnswer fit) {
      return FitPage.html(fit, wording, FitCharts.all(fit, wording));
    }
    if (answer instanceof BacktestAnswer season) {
      return html(season, wording, SeasonCharts.all(season, wording));
    }
    if (answer instanceof CheckAnswer paper) {
      return html(paper, wording, new CheckSections(paper, wording).all());
    }
    if (answer instanceof CompareAnswer compare) {
      return html(compare, wording, new CompareCharts(compare, wording));
    }
    if (answer instanceof SeasonAnswer season) {
      return html(season, wording, new PlanCharts(season, wording));
    }
    if (answer instanceof GridAnswer grid) {
      return html(grid, wording, new GridCharts(grid, wording));
    }
    if (answer instanceof YardAnswer yard) {
      return html(yard, wording, new YardCharts(yard, wording));
    }
    if (answer instanceof ChooseAnswer choose) {
      return html(choose, wording, new ChooseCharts(choose, wording));
    }
    throw new AssertionError("no page for " + answer.getClass());
  }

  /** The page of a run whose charts are drawn already. */
  public static String html(RunAnswer run, Wording wording, RunCharts figures) {
    return html(run, wording, new RunSections(run, wording, figures).all());
  }

  /** The page of a comparison whose charts are drawn already. */
  public static String html(CompareAnswer compare, Wording wording, CompareCharts figures) {
    return html(compare, wording, new CompareSections(compare, wording, figures).all());
  }

  /** The page of a grid whose charts are drawn already. */
  public static String html(GridAnswer grid, Wording wording, GridCharts figures) {
    return html(grid, wording, new GridSections(grid, wording, figures).all());
  }

  /** The page of a choice among plans whose charts are drawn already. */
  public static String html(ChooseAnswer choose, Wording wording, ChooseCharts figures) {
    return html(choose, wording, new ChooseSections(choose, wording, figures).all());
  }

  /** The page of a backtest whose charts are drawn already. */
  public static String html(BacktestAnswer season, Wording wording, List<Chart> charts) {
    return html(season, wording, new BacktestSections(season, wording, charts).all());
  }

  /** The page of season plans whose charts are drawn already. */
  public static String html(SeasonAnswer season, Wording wording, PlanCharts figures) {
    return html(season, wording, new SeasonSections(season, wording, figures).all());
  }

  /** The page of a yard whose charts are drawn already. */
  public static String html(YardAnswer yard, Wording wording, YardCharts figures) {
    return html(yard, wording, new YardSections(yard, wording, figures).all());
  }

  private static String html(Answer answer, Wording wording, List<Section> all) {
    List<Section> sections =
        Stream.concat(all.stream(), Stream.of(ProofSection.section(wording))).toList();
    return html(
        answer.header().plant(), asked(answer, wording), subtitle(answer, wording), sections);
  }

  /**
   * A page of these sections, those that are wanted.
   *
   * @param asked what was asked of the plant, behind its name in the title
   */
  static String html(String plant, String asked, String subtitle, List<Section> all) {
    List<Section> sections = all.stream().filter(Section::isWanted).toList();
    Html html = new Html();
    head(html, plant, asked, subtitle);
    html.raw("<nav aria-label=\"Contents\"><ul>\n");
    sections.forEach(
        section ->
            html.raw("<li><a href=\"#" + section.id() + "\">")
                .text(section.title())
                .raw("</a></li>\n"));
    html.raw("</ul></nav>\n<main>\n");
    for (Section section : sections) {
      html.raw("<section id=\"" + section.id() + "\">\n").element("h2", section.title());
      section.body().accept(html);
      html.raw("</section>\n");
    }
    return html.raw("</main>\n</body>\n</html>\n").toString();
  }

  private static void head(Html html, String plant, String asked, String subtitle) {
    html.raw("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
    html.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    html.raw(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src"
            + " 'unsafe-inline'\">\n");
    html.element("title", plant + ": " + asked);
    html.raw("<style>\n" + styles() + "</style>\n</head>\n<body>\n<header>\n");
    html.element("h1", plant);
    html.paragraph(subtitle);
    html.raw("</header>\n");
  }

  private static String asked(Answer answer, Wording wording) {
    if (answer instanceof SeasonAnswer season) {
      return "season plans " + plans(season, wording);
    }
    if (answer instanceof GridAnswer grid) {
      return new KeyWords(grid, wording).subjects() + " over a grid";
    }
    if (answer instanceof ChooseAnswer choose) {
      return "the best of " + wording.count(choose.plans().size()) + " plans";
    }
    if (answer instanceof BacktestAnswer) {
      return "against a season that has been";
    }
    if (answer instanceof YardAnswer yard) {
      return wording.titles().option(answer.header().option())
          + ", yard of "
          + wording.titles().cropInText(yard.asked().crop());
    }
    return answer instanceof CompareAnswer compare
        ? compare.options().isEmpty()
            ? wording.titles().option("base")
            : wording.titles().option("base") + " against " + options(compare, wording)
        : wording.titles().option(answer.header().option());
  }

  private static String options(CompareAnswer answer, Wording wording) {
    return answer.options().stream()
        .map(option -> wording.titles().option(option.name()))
        .collect(Collectors.joining(", "));
  }

  private static String plans(SeasonAnswer answer, Wording wording) {
    return answer.plans().stream()
        .map(plan -> wording.titles().plan(plan.name()))
        .collect(Collectors.joining(", "));
  }

  private static String subtitle(Answer answer, Wording wording) {
    Header header = answer.header();
    if (answer instanceof GridAnswer grid) {
      return new KeyWords(grid, wording).subtitle();
    }
    String option =
        header.option().equals("base")
            ? "The plant as it stands"
            : "With " + wording.titles().option(header.option());
    String what =
        option
            + (answer instanceof CompareAnswer compare && !compare.options().isEmpty()
                ? " against " + options(compare, wording)
                : "")
            + (answer instanceof SeasonAnswer season
                ? ", season plans " + plans(season, wording)
                : "")
            + (answer instanceof ChooseAnswer choose
                ? ": the best of " + wording.count(choose.plans().size()) + " plans"
                : "")
            + (answer instanceof YardAnswer yard
                ? ": the yard of " + wording.titles().cropInText(yard.asked().crop())
                : "");
    String changes =
        header.changes().isEmpty() ? "" : ", changed: " + ChangeWords.of(header.changes(), ", ");
    return what + changes + ". " + wording.span(header.from(), header.to()) + ".";
  }

  private static String styles() {
    try (InputStream in = ReportPage.class.getResourceAsStream("page.css")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
