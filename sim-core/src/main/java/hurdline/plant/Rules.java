package hurdline.plant;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Everything about a plant that no single key can show to be wrong.
 *
 * <p>Each group of rules passes over what it cannot resolve, so that one wrong name is told once
 * and the rest is still looked at. A group says which parts of a plant it looks at, so that a
 * changed plant is held only against those that the change can break; {@code RuleGroupsTest} holds
 * each group to its parts.
 */
public final class Rules {
  private static final List<Group> OF_PARTS =
      List.of(
          group(
              (plant, names, found) -> NameRules.check(plant, found),
              Plant::machines,
              Plant::products,
              Plant::options,
              Plant::plans),
          group((plant, names, found) -> CalendarRules.check(plant, found), Plant::calendar),
          group(CropRules::check, Plant::crops, Plant::deliveries, Plant::components),
          group(
              MachineRules::check,
              Plant::machines,
              Plant::components,
              Plant::lines,
              Plant::crops,
              Plant::calendar),
          group(
              LinkRules::check,
              Plant::lines,
              Plant::crops,
              Plant::machines,
              Plant::products,
              Plant::components),
          group(MillRules::check, Plant::machines, Plant::lines, Plant::products),
          group(
              ShareRules::check,
              Plant::lines,
              Plant::components,
              Plant::crops,
              Plant::deliveries,
              Plant::machines),
          group(
              FlowRules::check, Plant::lines, Plant::machines, Plant::products, Plant::components),
          group(SeasonRules::check, Plant::season, Plant::crews, Plant::calendar, Plant::lines),
          group(HandsRules::check, Plant::hands, Plant::crews, Plant::lines, Plant::calendar),
          group(
              ResourceRules::check,
              Plant::resources,
              Plant::machines,
              Plant::packages,
              Plant::crops,
              Plant::yard,
              Plant::deliveries),
          group(YardRules::check, Plant::yard, Plant::crops, Plant::deliveries),
          group(
              MoneyRules::check,
              Plant::money,
              Plant::packages,
              Plant::products,
              Plant::lines,
              Plant::crops),
          group(PackageRules::check, Plant::lines, Plant::packages, Plant::products),
          group(CleanlinessRules::check, Plant::products, Plant::components, Plant::lines),
          group((plant, names, found) -> MarketRules.check(plant, found), Plant::products),
          group(
              (plant, names, found) -> PurgeRules.check(plant, found),
              Plant::products,
              Plant::lines),
          group((plant, names, found) -> FreightRules.check(plant, found), Plant::products),
          group(
              PurchaseRules::check, Plant::money, Plant::crops, Plant::deliveries, Plant::calendar),
          group(StoreRules::check, Plant::products, Plant::packages, Plant::stores, Plant::lines));

  private static final List<Group> GROUPS =
      Stream.concat(
              OF_PARTS.stream(),
              Stream.of(Title.Kind.values())
                  .map(kind -> group(TitleRules.of(kind), Plant::titles, TitleRules.owners(kind))))
          .toList();

  private Rules() {}

  /** Looks for what is wrong. */
  interface Check {
    void check(Plant plant, Names names, Problems found);
  }

  /**
   * Rules that look at the same things.
   *
   * @param parts all that they look at
   */
  private record Group(Check rules, List<Function<Plant, Object>> parts) {
    /** Whether a plant has all of them from another. */
    boolean looksAtSame(Plant plant, Plant other) {
      for (Function<Plant, Object> part : parts) {
        if (part.apply(plant) != part.apply(other)) {
          return false;
        }
      }
      return true;
    }
  }

  @SafeVarargs
  private static Group group(Check rules, Function<Plant, Object>... parts) {
    return new Group(rules, List.of(parts));
  }

  /**
   * All that is wrong, in no order of the file.
   *
   * @param sound a plant that keeps all rules, from which some parts may be taken over
   */
  public static List<Problem> problems(Plant plant, Optional<Plant> sound) {
    Problems found = new Problems();
    Names names = new Names(plant);
    for (Group group : GROUPS) {
      if (sound.isEmpty() || !group.looksAtSame(plant, sound.get())) {
        group.rules().check(plant, names, found);
      }
    }
    return found.all();
  }
}
