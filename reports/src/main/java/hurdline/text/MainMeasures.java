package hurdline.text;

import hurdline.answer.Outline;
import hurdline.answer.Titles;
import hurdline.measure.Measure;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The measures that one asks for first, each with a few words for the head of a row.
 *
 * @param measure its full name
 * @param label such as {@code fed to stalk_line}
 */
public record MainMeasures(String measure, String label) {
  /** Fed, rate, made and left over by line, then yard, energy and margin. */
  public static List<MainMeasures> of(Outline outline, Wording wording) {
    Titles titles = wording.titles();
    List<MainMeasures> all = new ArrayList<>();
    for (Outline.Line line : outline.lines()) {
      all.add(
          new MainMeasures(
              Measure.MASS_FED.of(line.crop()), Titles.inText(titles.crop(line.crop())) + " fed"));
      all.add(
          new MainMeasures(
              Measure.LINE_THROUGHPUT.of(line.name()),
              "rate of " + titles.lineInText(line.name())));
      line.products()
          .forEach(
              product ->
                  all.add(
                      new MainMeasures(
                          Measure.PRODUCT_MASS.of(product),
                          Titles.inText(titles.product(product)))));
      all.add(
          new MainMeasures(
              Measure.SEASON_LEFT_OVER.of(line.name()),
              "carry-over of " + Titles.inText(titles.crop(line.crop()))));
    }
    outline
        .crops()
        .forEach(
            crop ->
                all.add(
                    new MainMeasures(
                        Measure.YARD_PEAK.of(crop.name()),
                        "peak in the yard, " + Titles.inText(titles.crop(crop.name())))));
    all.add(new MainMeasures(Measure.ENERGY_TOTAL.of(), "electricity"));
    all.add(new MainMeasures(Measure.MONEY_MARGIN.of(), "margin"));
    return all.stream().distinct().toList();
  }

  /** What a measure is called; its own name where it is none of those that one asks for first. */
  public static String label(String measure, Outline outline, Wording wording) {
    return Stream.concat(of(outline, wording).stream(), Stream.of(lessForgone()))
        .filter(main -> main.measure().equals(measure))
        .map(MainMeasures::label)
        .findFirst()
        .orElse(Titles.ofName(measure));
  }

  /** The margin of a plan less what the crop left over would have added. */
  public static MainMeasures lessForgone() {
    return new MainMeasures(Measure.MONEY_MARGIN_LESS_FORGONE.of(), "margin less margin forgone");
  }
}
