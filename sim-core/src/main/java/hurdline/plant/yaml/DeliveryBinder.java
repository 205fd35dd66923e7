package hurdline.plant.yaml;

import hurdline.plant.Bale;
import hurdline.plant.Calendar;
import hurdline.plant.Crop;
import hurdline.plant.Delivery;
import hurdline.plant.Delivery.DayHours;
import hurdline.plant.Delivery.Field;
import hurdline.plant.Delivery.Limit;
import hurdline.plant.Delivery.Loads;
import hurdline.plant.Delivery.Release;
import hurdline.plant.Delivery.Trucks;
import hurdline.random.Constant;
import hurdline.unit.Amount;
import hurdline.unit.Dimension;
import hurdline.unit.FileUnit;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads how crops come in. */
final class DeliveryBinder {
  private static final DayHours ALL_DAY = new DayHours(0, 86_400, EnumSet.allOf(DayOfWeek.class));
  private static final Bale NO_BALE =
      new Bale(
          new Constant(1),
          new Constant(0.12),
          Optional.empty(),
          Map.of(),
          Map.of(),
          0,
          Optional.empty());

  private final List<Crop> crops;
  private final Calendar calendar;

  DeliveryBinder(List<Crop> crops, Calendar calendar) {
    this.crops = crops;
    this.calendar = calendar;
  }

  Delivery delivery(String crop, NodeReader at) {
    Fields f = at.fields(MapKeys.DELIVERY);
    wayIn(f);
    Optional<Loads> loads = loads(f.at("loads"), isModules(crop));
    DayHours given = hours(f.at("hours"));
    DayHours hours = f.has("fields") ? given : loads.map(Loads::hours).orElse(given);
    Bale usual =
        crops.stream()
            .filter(c -> c.name().equals(crop))
            .map(Crop::bale)
            .findFirst()
            .orElse(NO_BALE);
    return new Delivery(
        crop,
        f.at("fields").each("field", (name, field) -> field(name, field, usual)),
        f.has("balers") ? OptionalInt.of(Numbers.whole(f.at("balers"), 1, 1)) : OptionalInt.empty(),
        RandomQuantityReader.of(f.at("yield_factor"), Dimension.SHARE, Range.NOT_BELOW_0, 1),
        WeatherBinder.weather(f.at("weather")),
        hours,
        trucks(f.at("trucks"), isModules(crop)),
        loads,
        StopBinder.job(f.at("weigh")),
        f.at("reject").list("limits", DeliveryBinder::limit),
        release(f),
        StopBinder.job(f.at("unload")).orElseGet(YardBinder::atOnce),
        Numbers.whole(f.at("hands"), 0, 0),
        Quantities.of(f.at("waiting_cost"), Dimension.MONEY_RATE, Range.NOT_BELOW_0, 0));
  }

  private static Optional<Release> release(Fields f) {
    double share = 0;
    double cost = 0;
    if (f.has("fails")) {
      Fields fails = f.at("fails").fields(MapKeys.FAILS);
      share = Quantities.of(fails.at("share"), Dimension.SHARE, Range.SHARE, 0);
      cost = Quantities.of(fails.at("cost"), Dimension.MONEY, Range.NOT_BELOW_0, 0);
      if (!f.has("release_after")) {
        f.at("fails")
            .wrong(
                "loads fail when they would be released, and none is kept apart",
                "a \"release_after\" beside it, such as \"release_after: 10 d\"");
      }
    }
    return f.has("release_after")
        ? Optional.of(
            new Release(
                RandomQuantityReader.of(
                    f.at("release_after"), Dimension.TIME, Range.NOT_BELOW_0, 0),
                share,
                cost))
        : Optional.empty();
  }

  private static Limit limit(NodeReader at) {
    Fields f = at.fields(MapKeys.REJECT);
    if (at.isMap() && !f.has("above") && !f.has("below")) {
      at.wrong("it has neither \"above\" nor \"below\"", "a limit such as \"above: 20 %\"");
    }
    return new Limit(
        Words.name(f.at("by"), "moisture or an attribute"),
        Quantities.optional(f.at("above"), Dimension.SHARE, Range.SHARE),
        Quantities.optional(f.at("below"), Dimension.SHARE, Range.SHARE));
  }

  /** Whether it is counted in modules; so too where the crop is not known. */
  private boolean isModules(String crop) {
    return crops.stream().noneMatch(known -> known.name().equals(crop) && !known.modules());
  }

  private static void wayIn(Fields f) {
    if (!f.here().isMap()) {
      return;
    }
    if (!f.has("fields") && !f.has("loads")) {
      f.here()
          .wrong(
              "it has neither \"fields\" nor \"loads\"", "fields with hours and trucks, or loads");
    }
    for (String key : List.of("hours", "trucks")) {
      if (f.has("fields") && !f.has(key)) {
        f.here()
            .wrong(
                "it has fields but no \"" + key + "\"",
                "the " + key + " that bring the bales of the fields in");
      }
    }
    for (String key : List.of("hours", "trucks", "yield_factor", "balers")) {
      if (!f.has("fields") && f.has("loads") && f.has(key)) {
        f.at(key)
            .idle(
                "\"" + key + "\" goes with fields, of which there are none",
                key.equals("hours") ? "the hours of \"loads\" rule" : "it is not used");
      }
    }
  }

  private static Field field(String name, NodeReader at, Bale usual) {
    Fields f = at.fields(MapKeys.FIELD);
    return new Field(
        name,
        Quantities.of(f.at("area"), Dimension.AREA, Range.ABOVE_0, 1),
        RandomQuantityReader.of(f.at("yield"), Dimension.YIELD, Range.NOT_BELOW_0, 0),
        Dates.date(f.at("ready")).orElse(LocalDate.MIN),
        Quantities.of(f.at("ready_sd"), Dimension.TIME, Range.NOT_BELOW_0, 0) / FileUnit.DAY.inSi(),
        balesADay(f.at("baling")),
        CropBinder.bale(f, usual));
  }

  /**
   * A rate by the hour would be read as one by day and night, while a baler works the receiving
   * hours alone: so many of those a day as nobody meant.
   */
  private static int balesADay(NodeReader at) {
    boolean byTheHour =
        at.scalar()
            .flatMap(said -> Amount.find(said.text()))
            .filter(amount -> amount.unit().matches("[a-z]+ ?/ ?(?:h|min|s)"))
            .isPresent();
    if (byTheHour) {
      at.wrong(
          at.shown() + " is by the hour",
          "what the baler makes on a dry day, in the receiving hours, such as \"380 bales/d\"");
      return 1;
    }
    return Quantities.whole(at, Dimension.BALE_RATE, 1 / FileUnit.DAY.inSi(), 1, 1);
  }

  private static DayHours hours(NodeReader at) {
    if (!at.isGiven()) {
      return ALL_DAY;
    }
    Fields f = at.fields(MapKeys.HOURS);
    int fromS = Dates.clock(f.at("from")).orElse(0);
    int toS = Dates.clock(f.at("to")).orElse(86_400);
    if (!(fromS < toS)) {
      f.at("to")
          .wrong(
              "the hours end at or before they begin",
              "hours within one day, \"from\" before \"to\", up to \"24:00\"");
      return ALL_DAY;
    }
    return new DayHours(fromS, toS, Dates.weekdays(f.at("days")));
  }

  private static Optional<Trucks> trucks(NodeReader at, boolean modules) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.TRUCKS);
    return Optional.of(
        new Trucks(
            Numbers.whole(f.at("count"), 0, 1),
            Counts.needed(f, modules),
            StopBinder.job(f.at("load")).orElseGet(YardBinder::atOnce),
            RandomQuantityReader.of(f.at("drive"), Dimension.TIME, Range.NOT_BELOW_0, 1)));
  }

  private Optional<Loads> loads(NodeReader at, boolean modules) {
    if (!at.isGiven()) {
      return Optional.empty();
    }
    Fields f = at.fields(MapKeys.LOADS);
    return Optional.of(
        new Loads(
            RandomQuantityReader.of(f.at("every"), Dimension.TIME, Range.ABOVE_0, 1),
            Counts.needed(f, modules),
            Dates.date(f.at("from")).orElse(calendar.from()),
            Dates.date(f.at("to")).orElse(calendar.to()),
            hours(f.at("hours"))));
  }
}
