package hurdline.plant.yaml;

import hurdline.plant.Crew;
import hurdline.plant.Resource;
import hurdline.plant.SeasonEntry;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Reads the season, crews and resources. */
final class SeasonBinder {
  private SeasonBinder() {}

  static List<SeasonEntry> season(At at) {
    List<SeasonEntry> entries = at.list("campaigns and changeovers", SeasonBinder::entry);
    if (entries.isEmpty() && at.tree().filter(Tree.Items.class::isInstance).isPresent()) {
      at.wrong("the season is empty", "at least one campaign");
    }
    return entries;
  }

  private static SeasonEntry entry(At at) {
    if (isChangeover(at)) {
      Fields f = at.fields(Shape.CHANGEOVER);
      int days = Quantities.whole(f.at("changeover"), Dimension.TIME, FileUnit.DAY.inSi(), 0, 1);
      return new SeasonEntry.Changeover(days, Numbers.whole(f.at("hands"), 0, 0));
    }
    Fields f = at.fields(Shape.CAMPAIGN);
    List<String> shifts = Words.names(f.at("shifts"), "a shift");
    if (f.has("shifts") && shifts.isEmpty()) {
      f.at("shifts").wrong("a campaign without a shift would never work", "a list such as [day]");
    }
    return new SeasonEntry.Campaign(
        Words.name(f.at("line"), "a line"),
        Dates.date(f.at("from")).orElse(LocalDate.MIN),
        Dates.date(f.at("to")).orElse(LocalDate.MIN),
        shifts);
  }

  private static boolean isChangeover(At at) {
    return at.isMap()
        && !at.child("line").isGiven()
        && at.entries().orElseThrow().keySet().stream()
            .anyMatch(key -> hurdline.plant.Nearest.to(key, List.of("changeover")).isPresent());
  }

  static List<Crew> crews(At at) {
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

  static Resource resource(String name, At at) {
    Fields f = at.fields(Shape.RESOURCE);
    return new Resource(
        name, Numbers.whole(f.at("count"), 0, 1), Words.names(f.at("first"), "a kind of job"));
  }
}
