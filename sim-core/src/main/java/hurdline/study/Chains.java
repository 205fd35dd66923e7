package hurdline.study;

import hurdline.chance.Streams;
import hurdline.work.LeftOver;
import hurdline.work.Outcome;
import hurdline.work.Replication;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;

/**
 * Lives of a plant whose calendars follow each other, each opening with the crop that the one before left.
 *
 * <p>Chain k begins with the chance of the replication that comes after k − 1 strides, so the same calendars of two plants are
 * pairs, however long the chains of either are. The first calendar opens as the file says; later ones have no stock on hand of a
 * crop that something brings but what was left. One that opens as a replication simulated alone and leaves nothing, or has none
 * behind it, is that replication and is not simulated again.
 */
final class Chains {
  private final Stage stage;
  private final int calendars;
  private final int stride;
  private final int chains;
  private final Optional<Figures> alone;
  private final boolean startsEmpty;
  private final double idleS;
  private final Outcome.Years[] anew; // null where a calendar is the replication simulated alone
  private final AtomicInteger next = new AtomicInteger();

  /**
   * @param calendars of each chain
   * @param stride replications from the first calendar of a chain to that of the next; no fewer than its calendars
   * @param alone the replications, each simulated alone, as far as they have been
   */
  Chains(Stage stage, int calendars, int stride, int chains, Optional<Figures> alone) {
    this.stage = stage;
    this.calendars = calendars;
    this.stride = stride;
    this.chains = chains;
    this.alone = alone;
    startsEmpty =
        stage.plant().deliveries().stream()
            .allMatch(of -> stage.plant().yard().onHand().getOrDefault(of.crop(), 0) == 0);
    idleS = LifeCalendar.of(stage.plant().calendar()).orElseThrow().idleS();
    anew = new Outcome.Years[chains * calendars];
  }

  /** Calendars of all chains. */
  int calendars() {
    return anew.length;
  }

  /** How many of them had to be simulated. */
  int playedAnew() {
    int played = 0;
    for (Outcome.Years one : anew) {
      played += one == null ? 0 : 1;
    }
    return played;
  }

  /**
   * A row for each year of each calendar, in the order of the chains; empty if stop was asked for before they were whole.
   */
  Optional<Figures> play(Effort effort, Runnable done, BooleanSupplier stop) {
    AtomicInteger whole = new AtomicInteger();
    try (ReplicationRunner runner = new ReplicationRunner(effort.seed(), Math.min(effort.threads(), chains))) {
      runner.share(
          thread -> {
            Replication replication = stage.replication();
            Streams streams = new Streams(effort.seed());
            for (int chain = next.getAndIncrement(); chain < chains; chain = next.getAndIncrement()) {
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
      int chain, Replication replication, Streams streams, Runnable done, BooleanSupplier stop) {
    LeftOver opening = null;
    for (int calendar = 0; calendar < calendars; calendar++) {
      if (stop.getAsBoolean()) {
        return false;
      }
      int one = chain * stride + calendar;
      if (isKnown(one, calendar, opening)) {
        opening = LeftOver.NONE;
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

  private boolean isKnown(int one, int calendar, LeftOver opening) {
    boolean opensAlike = opening == null || startsEmpty && opening.isEmpty();
    return opensAlike
        && alone.filter(known -> one < known.count()).isPresent()
        && (calendar == calendars - 1 || alone.get().balesLeft(one) == 0);
  }

  private Figures figures() {
    Figures figures = new Figures();
    for (int at = 0; at < anew.length; at++) {
      if (anew[at] == null) {
        Figures known = alone.orElseThrow();
        figures.add(known.yearColumns(), known.years(at / calendars * stride + at % calendars));
      } else {
        figures.add(anew[at].columns(), anew[at].values());
      }
    }
    return figures;
  }
}
