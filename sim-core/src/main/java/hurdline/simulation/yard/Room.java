package hurdline.simulation.yard;

import hurdline.compiled.YardPlan;
import java.util.Arrays;

/**
 * Room in the places: what is taken, and what is promised to bales that are on their way.
 *
 * <p>A promise is kept as reservations in particular places, the first that have room, so that
 * crops that share a place are never promised the same room twice. A bale that arrives goes to the
 * first place with room that nobody was promised; its own reservation is then given up in the last
 * place where its crop has one.
 */
final class Room {
  private final YardPlan plan;
  private final int crops;
  private final int places;
  private final int[] taken; // [place]
  private final int[] reserved; // [place]
  private final int[] reservedFor; // [place * crops + crop]
  private final int[] holds; // [crop]

  Room(YardPlan plan) {
    this.plan = plan;
    crops = plan.crops();
    places = plan.places();
    taken = new int[places];
    reserved = new int[places];
    reservedFor = new int[places * crops];
    holds = new int[crops];
    for (int crop = 0; crop < crops; crop++) {
      for (int place = 0; place < places; place++) {
        holds[crop] += plan.takes(place, crop) ? plan.holds(place) : 0;
      }
    }
  }

  void reset() {
    Arrays.fill(taken, 0);
    Arrays.fill(reserved, 0);
    Arrays.fill(reservedFor, 0);
  }

  /** Bales of the crop that could still be promised room. */
  int unpromised(int crop) {
    int room = 0;
    for (int place = 0; place < places; place++) {
      if (plan.takes(place, crop)) {
        room += Math.max(0, bare(place));
      }
    }
    return room;
  }

  /** What the crop's places would have to hold for so many more bales to find room. */
  int wanted(int crop, int bales) {
    return holds[crop] - unpromised(crop) + bales;
  }

  /** Promises room, of which there must be enough. */
  void promise(int crop, int bales) {
    int left = bales;
    for (int place = 0; place < places && left > 0; place++) {
      if (plan.takes(place, crop) && bare(place) > 0) {
        int here = Math.min(left, bare(place));
        reserved[place] += here;
        reservedFor[place * crops + crop] += here;
        left -= here;
      }
    }
    if (left > 0) {
      throw new IllegalStateException(
          "no room for " + left + " of " + bales + " bales of " + plan.crop(crop));
    }
  }

  /** Gives up room that was promised, in the last places first. */
  void giveUp(int crop, int bales) {
    int left = bales;
    for (int place = places - 1; place >= 0 && left > 0; place--) {
      int here = Math.min(left, reservedFor[place * crops + crop]);
      reserved[place] -= here;
      reservedFor[place * crops + crop] -= here;
      left -= here;
    }
  }

  /** Where a promised bale would go now. */
  private int placeFor(int crop) {
    for (int place = 0; place < places; place++) {
      if (plan.takes(place, crop) && (bare(place) > 0 || reservedFor[place * crops + crop] > 0)) {
        return place;
      }
    }
    throw new IllegalStateException("no room was promised to " + plan.crop(crop));
  }

  /** Takes room that was promised; tells where. */
  int takePromised(int crop) {
    int place = placeFor(crop);
    int from = place;
    if (bare(place) > 0) {
      from = places - 1;
      while (reservedFor[from * crops + crop] == 0) {
        from--;
      }
    }
    reserved[from]--;
    reservedFor[from * crops + crop]--;
    taken[place]++;
    return place;
  }

  /**
   * Takes room that was not promised: where there is some, else where all is promised but not
   * taken, else anywhere.
   */
  int takeAny(int crop) {
    int anywhere = Bales.none();
    int promised = Bales.none();
    for (int place = places - 1; place >= 0; place--) {
      if (plan.takes(place, crop)) {
        anywhere = place;
        promised = taken[place] < plan.holds(place) ? place : promised;
      }
    }
    for (int place = 0; place < places; place++) {
      if (plan.takes(place, crop) && bare(place) > 0) {
        taken[place]++;
        return place;
      }
    }
    int place = promised == Bales.none() ? anywhere : promised;
    taken[place]++;
    return place;
  }

  /** Takes room in this place, in excess of what it holds if it is full. */
  void take(int place) {
    taken[place]++;
  }

  void giveBack(int place) {
    taken[place]--;
  }

  private int bare(int place) {
    return plan.holds(place) - taken[place] - reserved[place];
  }
}
