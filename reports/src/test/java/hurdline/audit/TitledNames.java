package hurdline.audit;

import hurdline.answer.Titles;
import hurdline.answer.WhatIf;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Between the names of a plant file, which the tables have, and what the page shows for them. */
final class TitledNames {
  private static final Map<String, String> BASE =
      Map.of("options", "the plant as it stands", "plans", "the season as it stands");

  private final PlantFacts plant;

  TitledNames(PlantFacts plant) {
    this.plant = plant;
  }

  /**
   * @param section of the plant file, such as {@code yard.places}
   */
  String shown(String section, String name) {
    if (name.equals("base")) {
      return BASE.get(section);
    }
    if (WhatIf.isOne(name)) {
      return Titles.none().option(name);
    }
    String all =
        Arrays.stream(name.split("\\+"))
            .map(each -> plant.text(section + "." + each + ".title").orElse(each.replace('_', ' ')))
            .collect(Collectors.joining(" + "));
    return Pattern.compile("(?<=\\+ )[A-Z](?=[a-z])")
        .matcher(all)
        .replaceAll(first -> first.group().toLowerCase(Locale.ROOT));
  }

  /**
   * The name of which this is shown, after an article or with a small letter or not; what is shown
   * where there is none.
   */
  String named(String section, String shown) {
    String bare = shown.replaceFirst("^the ", "");
    if (shown.equalsIgnoreCase(BASE.get(section))) {
      return "base";
    }
    if (bare.contains(" + ")) {
      return Arrays.stream(bare.split(" \\+ "))
          .map(each -> named(section, each))
          .collect(Collectors.joining("+"));
    }
    List<String> names =
        plant.names(section).stream()
            .filter(name -> shown(section, name).equalsIgnoreCase(bare))
            .toList();
    return names.size() == 1 ? names.get(0) : shown;
  }
}
