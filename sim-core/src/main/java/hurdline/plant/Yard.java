package hurdline.plant;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * Where bales lie between arrival and the feed table.
 *
 * @param onHand bales of each crop on the first day
 * @param places in the order in which they are filled
 * @param fieldLossPerS decay rate of what waits at a field, 1/s
 * @param lifts how bales come to the table, by crop; a crop without one fills its table at once
 */
public record Yard(
    Map<String, Integer> onHand,
    List<Place> places,
    Pick pick,
    boolean turnAway,
    double fieldLossPerS,
    Map<String, Lift> lifts) {
  public Yard {
    onHand = InOrder.copy(onHand);
    places = List.copyOf(places);
    lifts = InOrder.copy(lifts);
    onHand.forEach((crop, bales) -> Check.count(0, "onHand of " + crop, bales));
    Check.notBelow0("fieldLossPerS", fieldLossPerS);
  }

  /**
   * Bales on hand on the first day for which there is no place, by crop: crops come by name, as
   * they do in the simulation, and fill places in the file's order.
   */
  public Map<String, Integer> withoutRoom() {
    Map<String, Integer> free = new HashMap<>();
    places.forEach(place -> free.put(place.name(), place.holds()));
    Map<String, Integer> without = new LinkedHashMap<>();
    new TreeMap<>(onHand)
        .forEach(
            (crop, bales) -> {
              int left = bales;
              for (Place place : places) {
                if (place.takes(crop)) {
                  int laid = Math.min(left, free.get(place.name()));
                  free.merge(place.name(), -laid, Integer::sum);
                  left -= laid;
                }
              }
              without.put(crop, left);
            });
    return without;
  }

  /** The same yard with one place larger or smaller. */
  public Yard with(Place changed, int holds) {
    List<Place> others =
        places.stream().map(place -> place.equals(changed) ? place.holding(holds) : place).toList();
    return new Yard(onHand, others, pick, turnAway, fieldLossPerS, lifts);
  }

  /**
   * @param lossPerS decay rate, 1/s: a share s lost per unit of time T gives −ln(1 − s)/T
   * @param crops that may lie there; empty for all
   * @param stack how bales are stacked there, where the file says so
   * @param costPerM2 of making its ground ready, once
   * @param lifeYr how long that lasts
   * @param climate what bales there become, where their moisture changes
   * @param limits that its stacks and all of it are held against
   * @param cover over each stack; its loss holds in place of the place's, and rain comes no further
   */
  public record Place(
      String name,
      int holds,
      double lossPerS,
      List<String> crops,
      Optional<Stack> stack,
      double costPerM2,
      double lifeYr,
      Optional<Climate> climate,
      Optional<Cover> cover,
      Optional<Limits> limits) {
    public Place {
      Check.count(0, "holds", holds);
      Check.notBelow0("lossPerS", lossPerS);
      Check.notBelow0("costPerM2", costPerM2);
      Check.above0("lifeYr", lifeYr);
      crops = List.copyOf(crops);
    }

    /** Decay rate of what lies there, 1/s. */
    public double decayPerS() {
      return cover.map(over -> over.lossPerS().orElse(lossPerS)).orElse(lossPerS);
    }

    /** What bales become there, as they lie. */
    public Optional<Climate> climateAsCovered() {
      return cover.isPresent() ? climate.map(Climate::dryOnly) : climate;
    }

    public boolean takes(String crop) {
      return crops.isEmpty() || crops.contains(crop);
    }

    private Place holding(int bales) {
      return new Place(
          name, bales, lossPerS, crops, stack, costPerM2, lifeYr, climate, cover, limits);
    }
  }

  /**
   * To which moisture bales tend on dry days and on wet ones, and how quickly; water over mass.
   *
   * @param drySlowS time constant on dry days: after it 1/e of the way is left
   * @param wet absent where rain does not reach them
   * @param wetSlowS time constant on wet days
   */
  public record Climate(double dry, double drySlowS, OptionalDouble wet, double wetSlowS) {
    public Climate {
      Check.part("dry", dry);
      Check.above0("drySlowS", drySlowS);
      wet.ifPresent(share -> Check.part("wet", share));
      Check.above0("wetSlowS", wetSlowS);
    }

    private Climate dryOnly() {
      return new Climate(dry, drySlowS, OptionalDouble.empty(), wetSlowS);
    }

    /** The highest moisture to which bales tend. */
    public double most() {
      return Math.max(dry, wet.orElse(0));
    }
  }

  /** The largest stack that the user allows, and the clear way between two. */
  public record Stack(int longBales, int wideBales, int highBales, double laneM) {
    public Stack {
      Check.count(1, "longBales", longBales);
      Check.count(1, "wideBales", wideBales);
      Check.count(1, "highBales", highBales);
      Check.notBelow0("laneM", laneM);
    }

    /** Bales of a full one: round ones lie in the hollows of the layer below, one fewer across. */
    public int bales(boolean round) {
      int across = wideBales * highBales - (round ? highBales * (highBales - 1) / 2 : 0);
      return longBales * across;
    }
  }

  /**
   * What a stack and a place may hold by the insurer or the fire code; absent where the file does
   * not say.
   *
   * @param value at the crop's price
   */
  public record Limits(
      OptionalDouble stackKg, OptionalDouble stackValue, OptionalDouble kg, OptionalDouble value) {
    public Limits {
      stackKg.ifPresent(limit -> Check.above0("stackKg", limit));
      stackValue.ifPresent(limit -> Check.above0("stackValue", limit));
      kg.ifPresent(limit -> Check.above0("kg", limit));
      value.ifPresent(limit -> Check.above0("value", limit));
    }
  }

  /**
   * Tarps over each stack, once for each that is built.
   *
   * @param cost of a stack
   * @param hands that cover and uncover it
   * @param lastsS of both together
   * @param lossPerS decay rate below it; as the place's where absent
   */
  public record Cover(double cost, int hands, double lastsS, OptionalDouble lossPerS) {
    public Cover {
      Check.notBelow0("cost", cost);
      Check.count(0, "hands", hands);
      Check.notBelow0("lastsS", lastsS);
      lossPerS.ifPresent(loss -> Check.notBelow0("lossPerS", loss));
    }
  }

  /** Which bale is picked next. */
  public sealed interface Pick {}

  public record OldestFirst() implements Pick {}

  public record NewestFirst() implements Pick {}

  public record DriestFirst() implements Pick {}

  /**
   * The first of these places that has one, oldest first; places not named come last, in the file's
   * order.
   */
  public record ByPlace(List<String> places) implements Pick {
    public ByPlace {
      places = List.copyOf(places);
    }
  }

  /**
   * @param bales moved at once, at least 1
   */
  public record Lift(Job job, int bales) {
    public Lift {
      Check.count(1, "bales", bales);
    }
  }
}
