package hurdline.study.rest;

import hurdline.compiled.CampaignHours;
import hurdline.compiled.Roster;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Machine;
import hurdline.plant.Plant;
import hurdline.plant.Product;
import hurdline.plant.SeasonEntry;
import hurdline.plant.Stop;
import hurdline.study.backtest.YardCounts;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * A plant over the rest of its season: campaigns, loads and fields that are still to come, the
 * stock, the ages of stops and the open orders of a day.
 */
final class RestOfSeason {
  private static final double DAY_S = 86_400;

  /** A field from which no load has come for so long is done (common practice, no source). */
  private static final int QUIET_D = 14;

  private final LocalDate asOf;
  private final SeasonSoFar soFar;
  private final OpeningContents contents;
  private final Map<String, Integer> onHand;
  private final Map<String, Double> ages;
  private final PurgeUnderWay purge;

  /**
   * @param onHand bales of each crop on the morning of the day
   * @param ages by {@code machine.stop}
   */
  RestOfSeason(
      LocalDate asOf,
      SeasonSoFar soFar,
      OpeningContents contents,
      Map<String, Integer> onHand,
      Map<String, Double> ages) {
    this.asOf = asOf;
    this.soFar = soFar;
    this.contents = contents;
    this.onHand = onHand;
    this.ages = ages;
    purge = new PurgeUnderWay(asOf, soFar);
  }

  /** The rest of this plant's season. */
  Plant of(Plant plant) {
    Calendar calendar = plant.calendar();
    Set<LocalDate> closed =
        calendar.closed().stream().filter(date -> !date.isBefore(asOf)).collect(Collectors.toSet());
    return new Plant(
        plant.name(),
        new Calendar(asOf, calendar.to(), calendar.shifts(), closed, calendar.repeats()),
        plant.components(),
        plant.crops(),
        plant.machines().stream().map(this::aged).map(contents::of).toList(),
        plant.products().stream().map(of -> purge.of(plant, contents.of(open(of)))).toList(),
        plant.packages(),
        plant.stores(),
        plant.lines(),
        season(plant),
        plant.crews(),
        plant.hands(),
        plant.resources(),
        YardCounts.holding(onHand, plant.yard()),
        plant.deliveries().stream().flatMap(of -> delivery(plant, of).stream()).toList(),
        plant.baseLoads(),
        plant.money(),
        plant.options(),
        plant.plans(),
        plant.doubts(),
        plant.titles());
  }

  private Machine aged(Machine machine) {
    Machine.Common common = machine.common();
    List<Stop> stops =
        common.stops().stream()
            .map(
                stop ->
                    stop.aged(
                        ages.getOrDefault(machine.name() + "." + stop.name(), stop.already())))
            .toList();
    return machine.with(new Machine.Common(common.powerW(), common.drawsWithFlow(), stops));
  }

  /**
   * Orders less what was made of them and lies in no store; those that are filled are none any
   * more.
   */
  private Product open(Product product) {
    double leftKg = soFar.deliveredKg(product);
    List<Product.Order> open = new ArrayList<>();
    for (Product.Order order : product.ordersByDue()) {
      double madeKg = Math.min(leftKg, order.massKg());
      leftKg -= madeKg;
      if (order.massKg() > madeKg) {
        open.add(
            madeKg > 0
                ? new Product.Order(
                    order.massKg() - madeKg, order.due(), order.latePerDay(), order.pricePerKg())
                : order);
      }
    }
    return product.withOrders(open);
  }

  /**
   * Campaigns from the day on. A changeover whose campaign is over is over or under way; the
   * campaign behind it begins when it would have.
   */
  private List<SeasonEntry> season(Plant plant) {
    List<SeasonEntry> left = new ArrayList<>();
    Roster roster = Roster.of(plant);
    boolean isKept = false;
    for (int at = 0; at < plant.season().size(); at++) {
      SeasonEntry entry = plant.season().get(at);
      if (!(entry instanceof SeasonEntry.Campaign campaign)) {
        if (isKept) {
          left.add(entry);
        }
        continue;
      }
      boolean afterChangeover = !isKept && at > 0;
      isKept = !campaign.to().isBefore(asOf);
      if (isKept) {
        LocalDate from = afterChangeover ? begins(roster, at, campaign) : campaign.from();
        left.add(
            new SeasonEntry.Campaign(
                campaign.line(),
                from.isBefore(asOf) ? asOf : from,
                campaign.to(),
                campaign.shifts(),
                campaign.standDown()));
      }
    }
    return left;
  }

  /** When a campaign of the season begins that a changeover may hold up. */
  static LocalDate begins(Roster roster, int entry, SeasonEntry.Campaign campaign) {
    return roster.campaigns().stream()
        .filter(of -> of.entry() == entry && of.beginS() > of.plannedS())
        .mapToDouble(CampaignHours::beginS)
        .mapToObj(beginS -> roster.date((int) (beginS / DAY_S)))
        .filter(date -> !date.isAfter(campaign.to()))
        .findFirst()
        .orElse(campaign.from());
  }

  /** What is still to come of a crop. */
  private Optional<Delivery> delivery(Plant plant, Delivery of) {
    Crop crop =
        plant.crops().stream()
            .filter(one -> one.name().equals(of.crop()))
            .findFirst()
            .orElseThrow();
    List<Delivery.Field> fields = fields(of, crop);
    Optional<Delivery.Loads> loads =
        of.loads()
            .filter(stream -> !stream.to().isBefore(asOf))
            .map(stream -> later(plant, stream));
    if (fields.isEmpty() && loads.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Delivery(
            of.crop(),
            fields,
            of.balers(),
            of.seasonFactor(),
            of.weather(),
            of.hours(),
            of.trucks(),
            loads,
            of.weigh(),
            of.rejects(),
            of.release(),
            of.unload(),
            of.hands(),
            of.waitingPerS()));
  }

  private Delivery.Loads later(Plant plant, Delivery.Loads stream) {
    double beforeS = DAY_S * ChronoUnit.DAYS.between(plant.calendar().from(), asOf);
    return new Delivery.Loads(
        stream.everyS(),
        stream.bales(),
        stream.from().isBefore(asOf) ? asOf : stream.from(),
        stream.to(),
        stream.hours(),
        stream.recorded().stream()
            .filter(load -> load.atS() >= beforeS)
            .map(load -> new Delivery.Recorded(load.atS() - beforeS, load.bales()))
            .toList());
  }

  /** Fields less the share of their mean crop that they have brought. */
  private List<Delivery.Field> fields(Delivery of, Crop crop) {
    Map<String, Double> broughtKg = new LinkedHashMap<>(soFar.broughtKg(crop));
    spread(of, broughtKg);
    List<Delivery.Field> left = new ArrayList<>();
    for (Delivery.Field field : of.fields()) {
      double brought = broughtKg.getOrDefault(field.name(), 0.0);
      double share = 1 - brought / meanKg(of, field);
      boolean isQuiet =
          soFar
              .lastLoad(crop, field.name())
              .filter(last -> last.isBefore(asOf.minusDays(QUIET_D)))
              .isPresent();
      if (brought == 0) {
        left.add(field);
      } else if (share > 0 && !isQuiet) {
        left.add(
            new Delivery.Field(
                field.name(),
                field.areaM2() * share,
                field.yieldKgPerM2(),
                asOf,
                0,
                field.balesPerDay(),
                field.bale()));
      }
    }
    return left;
  }

  private static double meanKg(Delivery of, Delivery.Field field) {
    return field.areaM2() * field.yieldKgPerM2().mean() * of.seasonFactor().mean();
  }

  /** Loads that name no field of the crop are of the fields that were ready first. */
  private static void spread(Delivery of, Map<String, Double> broughtKg) {
    Set<String> known = of.fields().stream().map(Delivery.Field::name).collect(Collectors.toSet());
    double looseKg =
        broughtKg.entrySet().stream()
            .filter(entry -> !known.contains(entry.getKey()))
            .mapToDouble(Map.Entry::getValue)
            .sum();
    for (Delivery.Field field :
        of.fields().stream().sorted(Comparator.comparing(Delivery.Field::ready)).toList()) {
      double room = Math.max(0, meanKg(of, field) - broughtKg.getOrDefault(field.name(), 0.0));
      double kg = Math.min(room, looseKg);
      if (kg > 0) {
        broughtKg.merge(field.name(), kg, Double::sum);
        looseKg -= kg;
      }
    }
  }
}
