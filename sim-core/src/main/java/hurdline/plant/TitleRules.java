package hurdline.plant;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** No two things of one kind may read alike, whatever their capitals, a name's underscore as a space. */
final class TitleRules {
  private TitleRules() {}

  static void check(Plant plant, Names names, Problems found) {
    for (Title.Kind kind : Title.Kind.values()) {
      List<Title> titles =
          plant.titles().stream().filter(title -> title.kind() == kind).toList();
      if (!titles.isEmpty()) {
        check(kind, titles, names(kind, plant, names), found);
      }
    }
  }

  private static void check(
      Title.Kind kind, List<Title> titles, Collection<String> names, Problems found) {
    List<String> titled = titles.stream().map(Title::name).toList();
    Map<String, String> taken = new HashMap<>();
    names.stream()
        .filter(name -> !titled.contains(name))
        .forEach(name -> taken.putIfAbsent(read(name), name));
    for (Title title : titles) {
      String other = taken.putIfAbsent(read(title.text()), title.name());
      if (other != null) {
        found.add(
            title.path(),
            kind.word() + " \"" + title.name() + "\" reads \"" + title.text() + "\", as " + kind.word() + " \"" + other + "\" does",
            "another title; in the answer nobody could tell which is which");
      }
    }
  }

  private static String read(String text) {
    return text.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Collection<String> names(Title.Kind kind, Plant plant, Names names) {
    return switch (kind) {
      case CROP -> names.crops.keySet();
      case MACHINE -> names.machines.keySet();
      case PRODUCT -> names.products.keySet();
      case LINE -> names.lines.keySet();
      case RESOURCE -> names.resources.keySet();
      case PLACE -> names.places.keySet();
      case OPTION -> plant.options().stream().map(Option::name).toList();
      case PLAN -> plant.plans().stream().map(Plan::name).toList();
    };
  }
}
