package hurdline.plant;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * No two things of one kind may read alike, whatever their capitals, a name's underscore as a
 * space.
 */
final class TitleRules {
  private TitleRules() {}

  static Rules.Check of(Title.Kind kind) {
    return (plant, names, found) ->
        check(
            kind,
            plant.titles().stream().filter(title -> title.kind() == kind).toList(),
            names(kind, plant, names),
            found);
  }

  /** The part of the plant that has the things of a kind. */
  static Function<Plant, Object> owners(Title.Kind kind) {
    return switch (kind) {
      case SHIFT -> Plant::calendar;
      case COMPONENT -> Plant::components;
      case CROP -> Plant::crops;
      case MACHINE, STOP, SCREEN -> Plant::machines;
      case PRODUCT -> Plant::products;
      case STORE -> Plant::stores;
      case LINE -> Plant::lines;
      case RESOURCE -> Plant::resources;
      case PLACE -> Plant::yard;
      case FIELD -> Plant::deliveries;
      case TASK -> Plant::season;
      case CHOICE -> Plant::titles;
      case OPTION -> Plant::options;
      case PLAN -> Plant::plans;
    };
  }

  private static void check(
      Title.Kind kind, List<Title> titles, Collection<String> names, Problems found) {
    Set<String> titled = new HashSet<>();
    titles.forEach(title -> titled.add(title.name()));
    Map<String, String> taken = new HashMap<>();
    for (String name : names) {
      if (!titled.contains(name)) {
        taken.putIfAbsent(read(name), name);
      }
    }
    Map<String, String> first = new HashMap<>();
    for (Title title : titles) {
      String before = first.putIfAbsent(title.name(), title.text());
      if (before != null) {
        sameTask(title, before, found);
        continue;
      }
      String other = taken.putIfAbsent(read(title.owner() + title.text()), title.name());
      if (other != null) {
        found.add(
            title.path(),
            kind.word()
                + " \""
                + title.name()
                + "\" reads \""
                + title.text()
                + "\", as "
                + kind.word()
                + " \""
                + other
                + "\" does",
            "another title; in the answer nobody could tell which is which");
      }
    }
  }

  /** Tasks of several changeovers may have one name, which then reads alike in all of them. */
  private static void sameTask(Title title, String before, Problems found) {
    if (!before.equals(title.text())) {
      found.add(
          title.path(),
          "task \""
              + title.name()
              + "\" reads \""
              + title.text()
              + "\" here and \""
              + before
              + "\" in another changeover",
          "one title for one name, or another name for another task");
    }
  }

  private static String read(String text) {
    return text.toLowerCase(Locale.ROOT).replace('_', ' ');
  }

  private static Collection<String> names(Title.Kind kind, Plant plant, Names names) {
    return switch (kind) {
      case SHIFT -> names.shifts.keySet();
      case COMPONENT -> names.components.keySet();
      case CROP -> names.crops.keySet();
      case MACHINE -> names.machines.keySet();
      case STOP -> ofMachines(plant, machine -> machine.common().stops().stream().map(Stop::name));
      case SCREEN ->
          ofMachines(
              plant,
              machine ->
                  machine instanceof Machine.HammerMill mill
                      ? mill.screens().stream().map(Machine.Screen::name)
                      : Stream.of());
      case PRODUCT -> names.products.keySet();
      case STORE -> names.stores.keySet();
      case LINE -> names.lines.keySet();
      case RESOURCE -> names.resources.keySet();
      case PLACE -> names.places.keySet();
      case FIELD ->
          plant.deliveries().stream()
              .flatMap(
                  delivery ->
                      delivery.fields().stream().map(field -> delivery.crop() + "." + field.name()))
              .toList();
      case TASK ->
          plant.season().stream()
              .flatMap(TitleRules::tasks)
              .map(SeasonEntry.Task::name)
              .distinct()
              .toList();
      case CHOICE ->
          plant.titles().stream()
              .filter(title -> title.kind() == Title.Kind.CHOICE)
              .map(Title::name)
              .toList();
      case OPTION -> plant.options().stream().map(Option::name).toList();
      case PLAN -> plant.plans().stream().map(Plan::name).toList();
    };
  }

  private static List<String> ofMachines(Plant plant, Function<Machine, Stream<String>> its) {
    return plant.machines().stream()
        .flatMap(machine -> its.apply(machine).map(name -> machine.name() + "." + name))
        .toList();
  }

  private static Stream<SeasonEntry.Task> tasks(SeasonEntry entry) {
    return entry instanceof SeasonEntry.Changeover changeover
        ? changeover.tasks().stream()
        : Stream.of();
  }
}
