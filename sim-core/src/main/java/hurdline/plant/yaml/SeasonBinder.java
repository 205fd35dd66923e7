package hurdline.plant.yaml;

import hurdline.plant.Crew;
import hurdline.plant.Resource;
import hurdline.plant.SeasonEntry;
import hurdline.plant.SeasonEntry.StandDown;
import hurdline.plant.SeasonEntry.Task;
import hurdline.plant.yaml.tree.Tree;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the season, crews and resources. */
final class SeasonBinder {
  private SeasonBinder() {}

  static List<SeasonEntry> season(NodeReader at) {
    List<SeasonEntry> entries = at.list("campaigns and changeovers", SeasonBinder::entry);
    if (entries.isEmpty() && at.tree().filter(Tree.Items.class::isInstance).isPresent()) {
      at.wrong("the season is empty", "at least one campaign");
    }
    return entries;
  }

  private static SeasonEntry entry(NodeReader at) {
    if (isChangeover(at)) {
      Fields f = at.fields(MapKeys.CHANGEOVER);
      int days = Quantities.whole(f.at("changeover"), Dimension.TIME, FileUnit.DAY.inSi(), 0, 1);
      return new SeasonEntry.Changeover(
          days, Numbers.whole(f.at("hands"), 0, 0), f.at("tasks").each("task", SeasonBinder::task));
    }
    Fields f = at.fields(MapKeys.CAMPAIGN);
    List<String> shifts = Words.names(f.at("shifts"), "a shift");
    if (f.has("shifts") && shifts.isEmpty()) {
      f.at("shifts").wrong("a campaign without a shift would never work", "a list such as [day]");
    }
    return new SeasonEntry.Campaign(
        Words.name(f.at("line"), "a line"),
        Dates.date(f.at("from")).orElse(LocalDate.MIN),
        Dates.date(f.at("to")).orElse(LocalDate.MIN),
        shifts,
        standDown(f.at("send_home")));
  }

  private static Optional<StandDown> standDown(NodeReader at) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.SEND_HOME);
    int below = Quantities.whole(f.at("below"), Dimension.BALES, 1, 1, 1);
    int backAt = Quantities.whole(f.at("back_at"), Dimension.BALES, 1, 1, below);
    if (backAt < below) {
      f.at("back_at")
          .wrong(
              f.at("back_at").shown() + " is fewer than \"below\"",
              "as many as \"below\", " + below + ", or more");
      return Optional.empty();
    }
    return Optional.of(new StandDown(below, backAt));
  }

  private static Task task(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.TASK);
    return new Task(
        name,
        Quantities.of(f.at("lasts"), Dimension.TIME, Range.NOT_BELOW_0, 0),
        Numbers.whole(f.at("hands"), 1, 1),
        Words.names(f.at("after"), "a task"));
  }

  private static boolean isChangeover(NodeReader at) {
    return at.isMap()
        && !at.child("line").isGiven()
        && at.entries().orElseThrow().keySet().stream()
            .anyMatch(key -> hurdline.plant.Nearest.to(key, List.of("changeover")).isPresent());
  }

  static List<Crew> crews(NodeReader at) {
    List<Crew> crews = new ArrayList<>();
    at.named("line")
        .forEach(
            (line, shifts) ->
                shifts
                    .named("shift")
                    .forEach(
                        (shift, hands) ->
                            crews.add(new Crew(line, shift, Numbers.whole(hands, 0, 0)))));
    return crews;
  }

  static Resource resource(String name, NodeReader at) {
    Fields f = at.fields(MapKeys.RESOURCE);
    return new Resource(
        name, Numbers.whole(f.at("count"), 0, 1), Words.names(f.at("priority"), "a kind of job"));
  }
}
