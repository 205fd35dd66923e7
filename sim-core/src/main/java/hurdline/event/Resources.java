package hurdline.event;

import java.util.Arrays;

/**
 * Resources of several servers each, and the jobs that wait for them.
 *
 * <p>A job asks for a resource, waits in its queue, begins when a server is free and the job's
 * <em>gate</em> (the hours of its kind) is open, and gives the server back. A queue is served by
 * rank, then by the instant of asking, then by the caller's order; jobs behind closed gates are
 * passed over. Gate 0 is always open. The resource number {@code count.length} stands for "needs
 * none": servers without end, behind gates all the same.
 *
 * <p>A job may need several resources ({@link #together}): it stands in the queue of each by its
 * rank there, holds none while it waits, and begins when all have a free server. Whoever is behind
 * it and needs less is served meanwhile. Plants without such jobs pass it all by.
 *
 * <p>A resource's hours are those in which a gate of {@link #hoursOf} is open; busy time and waits
 * count in these only. The number waiting is remembered for the peak when the clock moves on, not
 * when it changes: who is served in the instant of asking never waited.
 *
 * <p>Hot path: linked lists in arrays by job number, which grow to the highest job ever asked for
 * and are then kept. {@code ResourcesTest} compares it with a plain list.
 *
 * <p>One file because queues, servers and who begins next are one state.
 */
public final class Resources {
  private static final int NONE = -1;

  private int[] count; // [resource], behind them the endless one and joint needs
  private final int endless;
  private final JointNeeds joints;
  private final int gates;
  private boolean[] opensResource; // [resource * gates + gate]
  private final boolean[] gateOpen;
  private int[] free;
  private int[] waitingAt; // [resource * gates + gate]
  private int[] waitingOpen; // [resource], behind open gates
  private boolean[]
      serves; // [resource], whether a job may begin: looked at after every event, so kept ready
  private int serving; // how many of these
  private int[] first;
  private int[] last;
  private final QueueStatistics books;

  private int[] after; // [job]
  private int[] before;
  private int[] resourceOf; // NONE when the job is in no queue
  private int[] gateOf;
  private int[] rankOf;
  private long[] orderOf;
  private double[] askedAtS;

  /**
   * @param count servers of each resource, 0 or more @param gates how many, above 0
   */
  public Resources(int[] count, int gates) {
    if (!(gates > 0)) {
      throw new IllegalArgumentException("gates is " + gates + "; expected above 0");
    }
    int resources = count.length + 1;
    this.count = Arrays.copyOf(count, resources);
    this.count[count.length] = Integer.MAX_VALUE;
    endless = count.length;
    joints = new JointNeeds(resources);
    this.gates = gates;
    opensResource = new boolean[resources * gates];
    gateOpen = new boolean[gates];
    free = new int[resources];
    waitingAt = new int[resources * gates];
    waitingOpen = new int[resources];
    serves = new boolean[resources];
    first = new int[resources];
    last = new int[resources];
    books = new QueueStatistics(resources);
    makeRoom(16);
    reset();
  }

  /**
   * Ready for another replication: nobody waits, all servers are free, only gate 0 is open, the
   * books are empty.
   */
  public void reset() {
    System.arraycopy(count, 0, free, 0, count.length);
    Arrays.fill(gateOpen, false);
    gateOpen[0] = true;
    Arrays.fill(waitingAt, 0);
    Arrays.fill(waitingOpen, 0);
    Arrays.fill(serves, false);
    serving = 0;
    Arrays.fill(first, NONE);
    Arrays.fill(last, NONE);
    Arrays.fill(resourceOf, NONE);
    books.reset();
    for (int resource = 0; resource <= endless; resource++) {
      books.hours(resource, inHours(resource), 0);
    }
  }

  /** The number that stands for "no resource needed". */
  public int endless() {
    return endless;
  }

  /**
   * At set-up: the number that stands for several resources, taken together or not at all.
   *
   * @param ranks rank in the queue of each
   */
  public int together(int[] resources, int[] ranks) {
    if (resources.length < 2) {
      return resources.length == 0 ? endless : resources[0];
    }
    int number = joints.number(resources, ranks);
    if (number == count.length) {
      count = Arrays.copyOf(count, number + 1);
      free = Arrays.copyOf(free, number + 1);
      opensResource = Arrays.copyOf(opensResource, (number + 1) * gates);
      waitingAt = Arrays.copyOf(waitingAt, (number + 1) * gates);
      waitingOpen = Arrays.copyOf(waitingOpen, number + 1);
      serves = Arrays.copyOf(serves, number + 1);
      first = Arrays.copyOf(first, number + 1);
      last = Arrays.copyOf(last, number + 1);
      first[number] = NONE;
      last[number] = NONE;
    }
    return number;
  }

  /** Of several resources the first that has no free server, else the first. */
  public int lacking(int resource) {
    for (int part : joints.parts(resource)) {
      if (free[part] == 0) {
        return part;
      }
    }
    return joints.parts(resource)[0];
  }

  /** At set-up: jobs behind this gate may need this resource. */
  public void hoursOf(int resource, int gate) {
    for (int part : joints.parts(resource)) {
      opensResource[part * gates + gate] = true;
      books.hours(part, inHours(part), 0);
    }
  }

  public void open(int gate, boolean isOpen, double nowS) {
    if (gate == 0 || gateOpen[gate] == isOpen) {
      return;
    }
    gateOpen[gate] = isOpen;
    for (int resource = 0, at = gate; resource < count.length; resource++, at += gates) {
      waitingOpen[resource] += isOpen ? waitingAt[at] : -waitingAt[at];
      judge(resource);
      if (opensResource[at]) {
        books.hours(resource, inHours(resource), nowS);
      }
    }
  }

  public boolean isOpen(int gate) {
    return gateOpen[gate];
  }

  /**
   * Joins the queue of a resource.
   *
   * @param job any number from 0 that is not waiting; small ones keep the arrays small
   * @param rank lowest is served first
   * @param order lowest first among those of one rank that asked at one instant
   */
  public void ask(int resource, int job, int rank, long order, int gate, double nowS) {
    makeRoom(job + 1);
    if (resourceOf[job] != NONE) {
      throw new IllegalStateException("job " + job + " waits already");
    }
    for (int part : joints.parts(resource)) {
      books.asked(part, nowS);
    }
    resourceOf[job] = resource;
    gateOf[job] = gate;
    rankOf[job] = rank;
    orderOf[job] = order;
    askedAtS[job] = nowS;
    int ahead = last[resource];
    while (ahead != NONE && goesBefore(job, ahead)) {
      ahead = before[ahead];
    }
    linkBehind(ahead, job, resource);
    countWaiting(resource, gate, 1);
  }

  /** No longer wanted; what it waited so far counts. Nothing happens if it does not wait. */
  public void withdraw(int job, double nowS) {
    if (waits(job)) {
      for (int part : joints.parts(resourceOf[job])) {
        books.left(part, nowS);
      }
      unlink(job);
    }
  }

  /** Whether some job may begin now. */
  public boolean begins() {
    return serving > 0;
  }

  private void judge(int resource) {
    boolean now = waitingOpen[resource] > 0 && isFree(resource);
    if (serves[resource] != now) {
      serves[resource] = now;
      serving += now ? 1 : -1;
    }
  }

  private boolean isFree(int resource) {
    for (int part : joints.parts(resource)) {
      if (free[part] == 0) {
        return false;
      }
    }
    return true;
  }

  /** A resource has another number of free servers. */
  private void judgeAll(int resource) {
    judge(resource);
    for (int joint : joints.of(resource)) {
      judge(joint);
    }
  }

  /**
   * The next job that may begin now, which takes a server; -1 if there is none. Resources go by
   * number.
   */
  public int nextToBegin(double nowS) {
    if (serving == 0) {
      return NONE;
    }
    int job = firstOfAll();
    int resource = resourceOf[job];
    unlink(job);
    for (int part : joints.parts(resource)) {
      books.began(part, nowS);
      free[part]--;
      judgeAll(part);
    }
    return job;
  }

  private int firstOpen(int resource) {
    int job = first[resource];
    while (!gateOpen[gateOf[job]]) {
      job = after[job];
    }
    return job;
  }

  /** Of the first resource that serves somebody, alone or together with others, the first job. */
  private int firstOfAll() {
    for (int resource = 0; resource <= endless; resource++) {
      int job = serves[resource] ? firstOpen(resource) : NONE;
      int rank = job == NONE ? 0 : rankOf[job];
      for (int joint : joints.of(resource)) {
        if (serves[joint]) {
          int other = firstOpen(joint);
          int rankThere = joints.rank(joint, resource);
          if (job == NONE || goesBefore(other, rankThere, job, rank)) {
            job = other;
            rank = rankThere;
          }
        }
      }
      if (job != NONE) {
        return job;
      }
    }
    return NONE;
  }

  /** Gives a server back, or those that were taken together. */
  public void release(int resource, double nowS) {
    for (int part : joints.parts(resource)) {
      if (free[part] >= count[part]) {
        throw new IllegalStateException("resource " + part + " has no server out");
      }
      books.released(part, nowS);
      free[part]++;
      judgeAll(part);
    }
  }

  /** Books everything up to the end of the horizon, what still waits included. */
  public void finish(double endS) {
    for (int resource = 0; resource <= endless; resource++) {
      books.finish(resource, endS);
    }
  }

  public boolean waits(int job) {
    return job < resourceOf.length && resourceOf[job] != NONE;
  }

  /** How many wait, behind closed gates or open ones. */
  public int waiting(int resource) {
    return books.waiting(resource);
  }

  /** How many servers of a resource are at work. */
  public int busy(int resource) {
    return count[resource] - free[resource];
  }

  public int count(int resource) {
    return count[resource];
  }

  /**
   * Figures of each resource; those of time are booked up to its last change, or to the end after
   * {@link #finish}.
   */
  public QueueStatistics books() {
    return books;
  }

  private boolean inHours(int resource) {
    for (int gate = 0, at = resource * gates; gate < gates; gate++, at++) {
      if (gateOpen[gate] && opensResource[at]) {
        return true;
      }
    }
    return false;
  }

  private boolean goesBefore(int job, int other) {
    return goesBefore(job, rankOf[job], other, rankOf[other]);
  }

  private boolean goesBefore(int job, int rank, int other, int rankOfOther) {
    if (rank != rankOfOther) {
      return rank < rankOfOther;
    }
    if (askedAtS[job] != askedAtS[other]) {
      return askedAtS[job] < askedAtS[other];
    }
    return orderOf[job] < orderOf[other];
  }

  private void linkBehind(int ahead, int job, int resource) {
    int behind = ahead == NONE ? first[resource] : after[ahead];
    before[job] = ahead;
    after[job] = behind;
    if (ahead == NONE) {
      first[resource] = job;
    } else {
      after[ahead] = job;
    }
    if (behind == NONE) {
      last[resource] = job;
    } else {
      before[behind] = job;
    }
  }

  private void unlink(int job) {
    int resource = resourceOf[job];
    int ahead = before[job];
    int behind = after[job];
    if (ahead == NONE) {
      first[resource] = behind;
    } else {
      after[ahead] = behind;
    }
    if (behind == NONE) {
      last[resource] = ahead;
    } else {
      before[behind] = ahead;
    }
    countWaiting(resource, gateOf[job], -1);
    resourceOf[job] = NONE;
  }

  private void countWaiting(int resource, int gate, int more) {
    waitingAt[resource * gates + gate] += more;
    if (gateOpen[gate]) {
      waitingOpen[resource] += more;
    }
    judge(resource);
  }

  private void makeRoom(int jobs) {
    int had = resourceOf == null ? 0 : resourceOf.length;
    if (jobs <= had) {
      return;
    }
    int room = Math.max(jobs, 2 * had);
    after = had == 0 ? new int[room] : Arrays.copyOf(after, room);
    before = had == 0 ? new int[room] : Arrays.copyOf(before, room);
    gateOf = had == 0 ? new int[room] : Arrays.copyOf(gateOf, room);
    rankOf = had == 0 ? new int[room] : Arrays.copyOf(rankOf, room);
    orderOf = had == 0 ? new long[room] : Arrays.copyOf(orderOf, room);
    askedAtS = had == 0 ? new double[room] : Arrays.copyOf(askedAtS, room);
    resourceOf = had == 0 ? new int[room] : Arrays.copyOf(resourceOf, room);
    Arrays.fill(resourceOf, had, room, NONE);
  }
}
