package hurdline.plant.yaml;

import hurdline.plant.Delivery.PastYears;
import hurdline.plant.Delivery.Weather;
import hurdline.plant.Delivery.WetChain;
import hurdline.plant.Delivery.Wetness;
import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.unit.Dimension;
import java.time.Month;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads which days are wet: by chances, or by a file of past rain. */
final class WeatherBinder {
  private WeatherBinder() {}

  static Weather weather(NodeReader at) {
    Fields f = at.fields(MapKeys.WEATHER);
    int dryDays = Numbers.whole(f.at("dry_days"), 0, 0);
    double wetDay = Quantities.of(f.at("wet_day"), Dimension.SHARE, Range.SHARE, 0);
    double afterWet = Quantities.of(f.at("wet_after_wet"), Dimension.SHARE, Range.SHARE, wetDay);
    double wetFromM = Quantities.of(f.at("wet_threshold"), Dimension.LENGTH, Range.ABOVE_0, 1);
    if (at.isMap()) {
      oneOfBoth(f);
    }
    Weather chain =
        new WetChain(new Wetness(wetDay, afterWet), dryDays, byMonth(f, f.at("by_month")));
    return f.has("file")
        ? rain(at, f.at("file"))
            .<Weather>map(file -> new PastYears(file.years(wetFromM), dryDays))
            .orElse(chain)
        : chain;
  }

  /** A month that does not say how wet days keep together has it from the rest, if that says so. */
  private static Map<Month, Wetness> byMonth(Fields all, NodeReader at) {
    Map<Month, Wetness> months = new EnumMap<>(Month.class);
    at.named("month")
        .forEach(
            (word, entry) -> {
              Fields f = entry.fields(MapKeys.MONTH_WEATHER);
              double wetDay = Quantities.of(f.at("wet_day"), Dimension.SHARE, Range.SHARE, 0);
              NodeReader afterWet =
                  f.has("wet_after_wet") ? f.at("wet_after_wet") : all.at("wet_after_wet");
              Dates.month(at.key(word), word)
                  .ifPresent(
                      month ->
                          months.put(
                              month,
                              new Wetness(
                                  wetDay,
                                  Quantities.of(afterWet, Dimension.SHARE, Range.SHARE, wetDay))));
            });
    return months;
  }

  private static void oneOfBoth(Fields f) {
    if (f.has("file")) {
      for (String key : List.of("wet_day", "wet_after_wet", "by_month")) {
        if (f.has(key)) {
          f.at(key)
              .wrong(
                  "\"" + key + "\" beside a rain file, which alone says which days are wet",
                  "\"file\" with \"wet_threshold\", or \"wet_day\" with \"wet_after_wet\"");
        }
      }
      if (!f.has("wet_threshold")) {
        f.missing("wet_threshold");
      }
    } else if (f.has("wet_threshold")) {
      f.at("wet_threshold")
          .wrong(
              "\"wet_threshold\" without a rain file", "a \"file\" of past rain, such as rain.csv");
    } else if (!f.has("wet_day")) {
      f.missing("wet_day");
    }
  }

  /** Absent too where the file has problems, which are told under its own name. */
  private static Optional<RainFile> rain(NodeReader weather, NodeReader at) {
    String name = Words.text(at);
    boolean looked = at.scalar().isPresent() && weather.entries().orElseThrow().containsKey("file");
    if (!looked) {
      return Optional.empty(); // not a text, or under a misspelt key: told already
    }
    RainFiles rains = at.binding().rains();
    Optional<RainFile> file = rains.file(name);
    if (file.isEmpty()) {
      at.wrong(
          at.scalar().map(Scalar::text).map(MessageText::quoted).orElse("it")
              + " "
              + rains.reason(name),
          RainFile.WANTED + ", its path from the folder of the plant file");
    }
    file.filter(RainFile::isRight)
        .ifPresent(
            rain ->
                rain.leftOut()
                    .forEach(
                        year ->
                            at.idle(
                                "of " + MessageText.quoted(name) + " the year " + year,
                                "nothing, if the whole years that stay are enough")));
    return file.filter(RainFile::isRight);
  }
}
