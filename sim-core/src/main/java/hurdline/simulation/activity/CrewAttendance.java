package hurdline.simulation.activity;

import hurdline.compiled.CampaignHours;
import hurdline.compiled.PaidShift;
import hurdline.event.FutureEvents;
import hurdline.plant.Crew;
import hurdline.plant.Hands;
import hurdline.random.RandomStream;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * How many hands come to each shift, own and shared, and which shifts are not run for want of them.
 *
 * <p>Looked at as a shift starts. Who comes on a date is drawn for every date beforehand, whether
 * anybody is asked for or not, so that other campaigns meet the same draws. Lines that share hands
 * take of them in the order of the file. Nothing here is touched in a plant whose crews all come.
 */
final class CrewAttendance {
  /** Who comes of some hands on each date. */
  private record Source(String name, int hands, double absence, int[] come) {}

  private final ReplicationState present;
  private final CampaignHours[] campaign;
  private final int[] order; // campaigns, by the place of their line in the file
  private final Hands.Attendance[][] rule; // [campaign][shift] null where the whole crew comes
  private final int[][] crew; // [campaign][shift] hands of a whole one
  private final Map<String, Source> sources = new LinkedHashMap<>();
  private final int[][] there; // [campaign][shift] hands that work
  private final boolean[][] isShort; // [campaign][shift]
  private final int[] started; // [campaign] shifts that have started
  private final boolean any;

  CrewAttendance(ReplicationState present, CampaignHours[] campaign) {
    this.present = present;
    this.campaign = campaign;
    any = !present.layout.plant.hands().attendance().isEmpty();
    rule = new Hands.Attendance[campaign.length][];
    crew = new int[campaign.length][];
    there = new int[campaign.length][];
    isShort = new boolean[campaign.length][];
    started = new int[campaign.length];
    for (int c = 0; c < campaign.length; c++) {
      setUp(c);
    }
    order =
        IntStream.range(0, any ? campaign.length : 0)
            .boxed()
            .sorted(Comparator.comparingInt(this::placeOfLine))
            .mapToInt(Integer::intValue)
            .toArray();
  }

  private int placeOfLine(int c) {
    return present.layout.plant.lines().stream()
        .map(hurdline.plant.Line::name)
        .toList()
        .indexOf(campaign[c].line());
  }

  private void setUp(int c) {
    int n = any ? campaign[c].shifts().size() : 0;
    rule[c] = new Hands.Attendance[n];
    crew[c] = new int[n];
    there[c] = new int[n];
    isShort[c] = new boolean[n];
    for (int k = 0; k < n; k++) {
      PaidShift shift = campaign[c].shifts().get(k);
      crew[c][k] = crew(shift);
      rule[c][k] = hands().of(shift.line(), shift.shift()).orElse(null);
      if (rule[c][k] != null) {
        sources(rule[c][k], crew[c][k]);
      }
    }
  }

  private Hands hands() {
    return present.layout.plant.hands();
  }

  private int crew(PaidShift shift) {
    return present.layout.plant.crews().stream()
        .filter(one -> one.line().equals(shift.line()) && one.shift().equals(shift.shift()))
        .mapToInt(Crew::hands)
        .sum();
  }

  private void sources(Hands.Attendance one, int crew) {
    add(own(one), one.own().orElse(crew), one.absence());
    one.shares()
        .flatMap(name -> hands().shared().stream().filter(of -> of.name().equals(name)).findFirst())
        .ifPresent(pool -> add(shared(one, pool.name()), pool.hands(), pool.absence()));
  }

  private void add(String name, int hands, double absence) {
    sources.computeIfAbsent(
        name, of -> new Source(of, hands, absence, new int[present.roster.days()]));
  }

  private static String own(Hands.Attendance one) {
    return "hands.attendance." + one.line() + "." + one.shift();
  }

  /** Shared hands are others in each shift. */
  private static String shared(Hands.Attendance one, String pool) {
    return "hands.shared." + pool + "." + one.shift();
  }

  void reset() {
    Arrays.fill(started, 0);
    for (int c = 0; c < campaign.length; c++) {
      Arrays.fill(isShort[c], false);
      System.arraycopy(crew[c], 0, there[c], 0, crew[c].length);
    }
    sources.values().forEach(this::draw);
  }

  private void draw(Source source) {
    RandomStream stream = present.stream(source.name());
    for (int day = 0; day < source.come().length; day++) {
      int come = 0;
      for (int hand = 0; hand < source.hands(); hand++) {
        come += stream.next() > source.absence() ? 1 : 0;
      }
      source.come()[day] = come;
    }
  }

  /** Whether a campaign's line asks for a crew in one of its shifts. */
  interface Asks {
    boolean crew(int campaign, int shift);
  }

  /** Some shift may start now. */
  void look(Asks asks) {
    double nowS = present.nowS + FutureEvents.instantS();
    for (int c : order) {
      while (started[c] < rule[c].length && campaign[c].shifts().get(started[c]).fromS() <= nowS) {
        int k = started[c]++;
        if (rule[c][k] != null && asks.crew(c, k)) {
          decide(c, k);
        }
      }
    }
  }

  private void decide(int c, int k) {
    Hands.Attendance one = rule[c][k];
    int day = campaign[c].shifts().get(k).day();
    int come = Math.min(crew[c][k], sources.get(own(one)).come()[day]);
    int[] pool = one.shares().map(name -> sources.get(shared(one, name)).come()).orElse(null);
    int more = pool == null ? 0 : Math.min(crew[c][k] - come, pool[day]);
    isShort[c][k] = come + more < one.least();
    there[c][k] = isShort[c][k] ? 0 : come + more;
    if (pool != null && !isShort[c][k]) {
      pool[day] -= more;
    }
  }

  /** Whether a shift is not run for want of hands. */
  boolean isShort(int c, int shift) {
    return any && isShort[c][shift];
  }

  /** Whether the shift that has started last, and is not over, is not run for want of hands. */
  boolean isShort(int c) {
    int last = started[c] - 1;
    return any
        && last >= 0
        && isShort[c][last]
        && present.nowS < campaign[c].shifts().get(last).toS();
  }

  /** Hands that work in a shift, of a crew of so many. */
  int there(int c, int shift, int hands) {
    return any && rule[c][shift] != null ? there[c][shift] : hands;
  }
}
