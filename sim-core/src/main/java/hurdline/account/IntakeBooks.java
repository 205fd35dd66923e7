package hurdline.account;

import hurdline.compiled.YardPlan;
import java.util.Arrays;

/**
 * What came in by crop: bales and masses weighed in, lost, set on the table and still there; levels
 * of the yard; trips.
 *
 * <p>The yard's side of the balance, for each crop and component: {@code onHand + weighedIn +
 * putBack = lostInYard + setOnTable + inPlacesAtEnd + inTrucksAtEnd}. What was bought is what was
 * weighed in and did not fail its test.
 */
public final class IntakeBooks {
  /** Came over the scale. */
  public final MassLedger weighedIn;

  /** Lay in the yard at time zero. */
  public final MassLedger onHand;

  public final MassLedger lostAtField;
  public final MassLedger lostInYard;
  public final MassLedger setOnTable;
  public final MassLedger putBack;
  public final MassLedger inPlacesAtEnd;

  /** Null where no place has a limit. */
  public final PlaceLimits limits;

  /** Weighed in, by field in place of crop, where something was paid on contract. */
  public final MassLedger ofFields;

  /** Came over the scale and was sent away. */
  public final MassLedger rejected;

  /** Was kept apart, failed its test and was sent away; taken back from what was weighed in. */
  public final MassLedger failed;

  /** Weighed in, not yet unloaded. */
  public final MassLedger inTrucksAtEnd;

  public final YardLevels levels;
  public final TripBooks trips;
  public final RoomBooks room;
  public final LoadBooks loads = new LoadBooks();
  public final PlaceBooks places;

  private final MassLedger[] ledgers;
  private final double[] drawnKg;
  private final int[] balesWeighedIn;
  private final int[] balesOnHand;
  private final int[] turnedAway;
  private final int[] balesRejected;
  private final int[] loadsFailed;
  private final int[] balesFailed;
  private final int[] keptApart;
  private final int[] keptApartPeak;
  private final double[] driedInYardKg;
  private final boolean[] isOpen; // by field
  private final int[] heldAtField;
  private final int[] heldAtFieldPeak;
  private final int[] lifted;
  private final double[] ageS;

  /**
   * @param fields of all crops
   */
  public IntakeBooks(YardPlan plan, int fields) {
    int crops = plan.crops();
    ofFields = new MassLedger(fields, 0);
    isOpen = new boolean[fields];
    ledgers = new MassLedger[10];
    for (int ledger = 0; ledger < ledgers.length; ledger++) {
      ledgers[ledger] = new MassLedger(crops, plan.components());
    }
    weighedIn = ledgers[0];
    onHand = ledgers[1];
    lostAtField = ledgers[2];
    lostInYard = ledgers[3];
    setOnTable = ledgers[4];
    putBack = ledgers[5];
    inPlacesAtEnd = ledgers[6];
    inTrucksAtEnd = ledgers[7];
    rejected = ledgers[8];
    failed = ledgers[9];
    limits = plan.hasLimits() ? new PlaceLimits(plan) : null;
    levels = new YardLevels(plan);
    trips = new TripBooks(crops, plan.days());
    room = new RoomBooks(crops);
    places = new PlaceBooks(plan.places(), crops);
    loadsFailed = new int[crops];
    balesFailed = new int[crops];
    keptApart = new int[crops];
    keptApartPeak = new int[crops];
    driedInYardKg = new double[crops];
    drawnKg = new double[crops];
    balesWeighedIn = new int[crops];
    balesOnHand = new int[crops];
    turnedAway = new int[crops];
    balesRejected = new int[crops];
    heldAtField = new int[crops];
    heldAtFieldPeak = new int[crops];
    lifted = new int[crops];
    ageS = new double[crops];
  }

  public void reset() {
    for (MassLedger ledger : ledgers) {
      ledger.reset();
    }
    ofFields.reset();
    Arrays.fill(isOpen, false);
    levels.reset();
    if (limits != null) {
      limits.reset();
    }
    trips.reset();
    room.reset();
    loads.reset();
    places.reset();
    Arrays.fill(loadsFailed, 0);
    Arrays.fill(balesFailed, 0);
    Arrays.fill(keptApart, 0);
    Arrays.fill(keptApartPeak, 0);
    Arrays.fill(driedInYardKg, 0);
    Arrays.fill(drawnKg, 0);
    Arrays.fill(balesWeighedIn, 0);
    Arrays.fill(balesOnHand, 0);
    Arrays.fill(turnedAway, 0);
    Arrays.fill(balesRejected, 0);
    Arrays.fill(heldAtField, 0);
    Arrays.fill(heldAtFieldPeak, 0);
    Arrays.fill(lifted, 0);
    Arrays.fill(ageS, 0);
  }

  /** Forgets what was last found to lie in places and on trucks; what else is booked stays. */
  public void clearStock() {
    inPlacesAtEnd.reset();
    inTrucksAtEnd.reset();
  }

  /** Books times up to the end of the horizon. */
  public void finish(double endS) {
    levels.finish(endS);
    if (limits != null) {
      limits.finish(endS);
    }
    room.finish(endS);
  }

  /** A field of the crop was drawn to bear this much. */
  public void drawn(int crop, double kg) {
    drawnKg[crop] += kg;
  }

  public void baleWeighedIn(int crop) {
    balesWeighedIn[crop]++;
  }

  public void baleOnHand(int crop) {
    balesOnHand[crop]++;
  }

  public void turnedAway(int crop, int bales) {
    turnedAway[crop] += bales;
  }

  public void rejected(int crop, int bales) {
    balesRejected[crop] += bales;
  }

  /**
   * @param more bales that may not be fed yet; below 0 when they are released
   */
  public void keptApart(int crop, int more) {
    keptApart[crop] += more;
    keptApartPeak[crop] = Math.max(keptApartPeak[crop], keptApart[crop]);
  }

  /** A load that was weighed in is sent away and was not bought. */
  public void failed(int crop, int bales) {
    loadsFailed[crop]++;
    balesFailed[crop] += bales;
    balesWeighedIn[crop] -= bales;
  }

  public int loadsFailed(int crop) {
    return loadsFailed[crop];
  }

  public int balesFailed(int crop) {
    return balesFailed[crop];
  }

  /** Bales in the yard that may not be fed yet. */
  public int keptApart(int crop) {
    return keptApart[crop];
  }

  public int keptApartPeak(int crop) {
    return keptApartPeak[crop];
  }

  /** Water that a bale has lost to the air in the yard; below 0 where it has taken up more. */
  public void driedInYard(int crop, double kg) {
    driedInYardKg[crop] += kg;
  }

  public double driedInYardKg(int crop) {
    return driedInYardKg[crop];
  }

  /** Whether more bales of a field are still to come. */
  public void isOpen(int field, boolean open) {
    isOpen[field] = open;
  }

  public boolean isOpen(int field) {
    return isOpen[field];
  }

  public int balesRejected(int crop) {
    return balesRejected[crop];
  }

  /**
   * @param more bales that came to lie at fields; below 0 when they go on a truck
   */
  public void heldAtField(int crop, int more) {
    heldAtField[crop] += more;
    heldAtFieldPeak[crop] = Math.max(heldAtFieldPeak[crop], heldAtField[crop]);
  }

  /** A bale is set on the table at that age. */
  public void lifted(int crop, double baleAgeS) {
    lifted[crop]++;
    ageS[crop] += baleAgeS;
  }

  /**
   * What the crop's fields were drawn to bear this year; what another year left unbaled is not in
   * it.
   */
  public double drawnKg(int crop) {
    return drawnKg[crop];
  }

  public int balesWeighedIn(int crop) {
    return balesWeighedIn[crop];
  }

  /** Bales that lay in the yard at time zero. */
  public int balesOnHand(int crop) {
    return balesOnHand[crop];
  }

  public int turnedAway(int crop) {
    return turnedAway[crop];
  }

  /** Baled and not yet on a truck. */
  public int heldAtField(int crop) {
    return heldAtField[crop];
  }

  public int heldAtFieldPeak(int crop) {
    return heldAtFieldPeak[crop];
  }

  /** Bales set on the table; one that was put back and set there again counts again. */
  public int lifted(int crop) {
    return lifted[crop];
  }

  /** Sum of the ages of all {@link #lifted} bales. */
  public double ageS(int crop) {
    return ageS[crop];
  }
}
