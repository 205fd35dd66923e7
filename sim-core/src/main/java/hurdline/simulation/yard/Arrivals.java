package hurdline.simulation.yard;

import java.util.Arrays;

/**
 * What brings bales: the trucks, numbered first, then loads that come by themselves, whose rows are
 * handed out again. A carrier has at most one job at a time, so its number is the job's.
 */
public final class Arrivals {

  /** What a carrier does, or waits to do. */
  static final int IDLE = 0;

  static final int LOAD = 1;
  static final int WEIGH_IN = 2;
  static final int UNLOAD = 3;
  static final int WEIGH_OUT = 4;
  static final int DRIVE = 5;
  static final int WAIT_FOR_ROOM = 6;

  final int trucks;
  public final BaleList cargo;
  int[] crop;
  int[] doing;
  int[] field; // of a truck
  int[] claimed; // bales at that field
  boolean[] hasRoom; // promised in the yard
  public boolean[] weighedIn;
  double[] startedS;
  double[] askedS;
  double[] waitedS;
  int[] ticket; // of the load that it brought last, by its number in the books
  long[] turn; // in which it set out or came
  private int[] nextFree;
  private int free;
  private int rows;

  Arrivals(Bales bales, int trucks) {
    this.trucks = trucks;
    int room = trucks + 16;
    cargo = new BaleList(bales, room);
    crop = new int[room];
    doing = new int[room];
    field = new int[room];
    claimed = new int[room];
    hasRoom = new boolean[room];
    weighedIn = new boolean[room];
    startedS = new double[room];
    askedS = new double[room];
    waitedS = new double[room];
    ticket = new int[room];
    turn = new long[room];
    nextFree = new int[room];
    reset();
  }

  void reset() {
    rows = trucks;
    free = Bales.none();
    cargo.reset();
    Arrays.fill(doing, IDLE);
  }

  boolean isTruck(int carrier) {
    return carrier < trucks;
  }

  public int rows() {
    return rows;
  }

  int addLoad(int ofCrop) {
    int load = free;
    if (load == Bales.none()) {
      load = rows++;
      if (load == crop.length) {
        grow(2 * rows);
      }
    } else {
      free = nextFree[load];
    }
    crop[load] = ofCrop;
    return load;
  }

  void freeLoad(int load) {
    doing[load] = IDLE;
    nextFree[load] = free;
    free = load;
  }

  void setOut(int carrier, long inTurn, double nowS) {
    turn[carrier] = inTurn;
    startedS[carrier] = nowS;
    waitedS[carrier] = 0;
    hasRoom[carrier] = false;
    weighedIn[carrier] = false;
  }

  /** The carrier has waited since it asked. */
  void served(int carrier, double nowS) {
    waitedS[carrier] += nowS - askedS[carrier];
  }

  private void grow(int room) {
    cargo.makeRoom(room);
    crop = Arrays.copyOf(crop, room);
    doing = Arrays.copyOf(doing, room);
    field = Arrays.copyOf(field, room);
    claimed = Arrays.copyOf(claimed, room);
    hasRoom = Arrays.copyOf(hasRoom, room);
    weighedIn = Arrays.copyOf(weighedIn, room);
    startedS = Arrays.copyOf(startedS, room);
    askedS = Arrays.copyOf(askedS, room);
    waitedS = Arrays.copyOf(waitedS, room);
    ticket = Arrays.copyOf(ticket, room);
    turn = Arrays.copyOf(turn, room);
    nextFree = Arrays.copyOf(nextFree, room);
  }
}
