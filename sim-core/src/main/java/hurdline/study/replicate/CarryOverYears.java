package hurdline.study.replicate;

import hurdline.random.RandomStreams;
import hurdline.simulation.CompiledPlant;
import hurdline.simulation.Replication;
import hurdline.simulation.results.Outcome;
import hurdline.simulation.yard.CarriedOverStock;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Lives of a plant whose calendars follow each other, each opening with the crop that the one
 * before left.
 *
 * <p>Chain k begins with the chance of the replication that comes after k − 1 strides, so the same
 * calendars of two plants are pairs, however long the chains of either are. The first calendar
 * opens as the file says; later ones have no stock on hand of a crop that something brings but what
 * was left. One that opens as a replication simulated alone and leaves nothing, or has none behind
 * it, is that replication and is not simulated again, unless a demand ratchet looks back from one
 * calendar into the one before.
 */
public final class CarryOverYears {
  private final CompiledPlant stage;
  private final int calendars;
  private final int stride;
  private final int chains;
  private final Optional<ReplicationResults> alone;
  private final boolean startsEmpty;
  private final boolean ratchet; // a calendar's demand is billed in the next
  private final double idleS;
  private final Outcome.Years[] anew; // null where a calendar is the replication simulated alone
  private final AtomicInteger next = new AtomicInteger();

  /**
   * @param calendars of each chain
   * @param stride replications from the first calendar of a chain to that of the next; no fewer
   *     than its calendars
   * @param alone the replications, each simulated alone, as far as they have been
   */
  public CarryOverYears(
      CompiledPlant stage,
      int calendars,
      int stride,
      int chains,
      Optional<ReplicationResults> alone) {
    this.stage = stage;
    this.calendars = calendars;
    this.stride = stride;
    this.chains = chains;
    this.alone = alone;
    startsEmpty =
        stage.plant().deliveries().stream()
            .allMatch(of -> stage.plant().yard().onHand().getOrDefault(of.crop(), 0) == 0);
    ratchet =
        stage.plant().money().filter(money -> !money.tariff().ratchets().isEmpty()).isPresent();
    idleS = LifeCalendar.of(stage.plant().calendar()).orElseThrow().idleS();
    anew = new Outcome.Years[chains * calendars];
  }

  /** Calendars of all chains. */
  public int calendars() {
    return anew.length;
  }

  /** How many of them had to be simulated. */
  public int simulatedAnew() {
    int simulated = 0;
    for (Outcome.Years one : anew) {
      simulated += one == null ? 0 : 1;
    }
    return simulated;
  }

  /**
   * A row for each year of each calendar, in the order of the chains; empty if stop was asked for
   * before they were whole.
   */
  Optional<ReplicationResults> simulate(RunSettings effort, Runnable done, BooleanSupplier stop) {
    AtomicInteger whole = new AtomicInteger();
    try (ReplicationRunner runner =
        new ReplicationRunner(effort.seed(), Math.min(effort.threads(), chains))) {
      runner.share(
          thread -> {
            Replication replication = stage.replication();
            RandomStreams streams = new RandomStreams(effort.seed());
            for (int chain = next.getAndIncrement();
                chain < chains;
                chain = next.getAndIncrement()) {
              if (!follow(chain, replication, streams, done, stop)) {
                return;
              }
              whole.incrementAndGet();
            }
          });
    }
    return whole.get() < chains ? Optional.empty() : Optional.of(figures());
  }

  private boolean follow(
      int chain,
      Replication replication,
      RandomStreams streams,
      Runnable done,
      BooleanSupplier stop) {
    CarriedOverStock opening = null;
    for (int calendar = 0; calendar < calendars; calendar++) {
      if (stop.getAsBoolean()) {
        return false;
      }
      int one = chain * stride + calendar;
      if (isKnown(one, calendar, opening)) {
        opening = CarriedOverStock.NONE;
      } else {
        Outcome outcome = replication.run(streams, one + 1, opening, null);
        anew[chain * calendars + calendar] = outcome.years();
        opening = replication.leftOver().later(idleS);
      }
      synchronized (this) {
        done.run();
      }
    }
    return true;
  }

  private boolean isKnown(int one, int calendar, CarriedOverStock opening) {
    boolean opensAlike = opening == null || !ratchet && startsEmpty && opening.isEmpty();
    return opensAlike
        && alone.filter(known -> one < known.count()).isPresent()
        && (calendar == calendars - 1 || !ratchet && alone.get().balesLeft(one) == 0);
  }

  private ReplicationResults figures() {
    ReplicationResults figures = new ReplicationResults();
    for (int at = 0; at < anew.length; at++) {
      if (anew[at] == null) {
        ReplicationResults known = alone.orElseThrow();
        figures.add(known.yearColumns(), known.years(at / calendars * stride + at % calendars));
      } else {
        figures.add(anew[at].columns(), anew[at].values());
      }
    }
    return figures;
  }
}
