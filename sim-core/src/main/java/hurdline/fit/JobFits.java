package hurdline.fit;

import hurdline.plant.Delivery;
import hurdline.plant.Job;
import hurdline.plant.Machine;
import hurdline.plant.Packaging;
import hurdline.plant.Plant;
import hurdline.random.Distribution;
import hurdline.records.ChangeRecord;
import hurdline.records.Records;
import hurdline.records.StopRecord;
import hurdline.records.StopRecord.Repair;
import hurdline.records.TicketRecord;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How long jobs take that are no stops: changes of packages and screens, loading, driving and
 * unloading of trucks.
 */
final class JobFits {
  private static final double MINUTE_S = 60;
  private static final double FIVE_S = 5 * MINUTE_S;
  private static final int ENOUGH_FOR_FIVES = 10;

  /** More than this between two times of one truck is something else too. */
  private static final double LONGEST_S = 12 * 3600;

  /**
   * @param said what the plant file has
   */
  record JobFit(AmountFit fit, Optional<Distribution> said) {}

  private final Plant plant;
  private final Records records;
  private final RepairFits lengths;
  private final List<JobFit> fits = new ArrayList<>();

  JobFits(Plant plant, Records records, RepairFits lengths) {
    this.plant = plant;
    this.records = records;
    this.lengths = lengths;
  }

  List<JobFit> all() {
    plant.packages().forEach(this::packages);
    plant.machines().stream()
        .filter(Machine.HammerMill.class::isInstance)
        .forEach(mill -> screens((Machine.HammerMill) mill));
    plant.deliveries().forEach(this::trucks);
    return fits;
  }

  private void packages(Packaging packaging) {
    List<StopRecord> rows = new ArrayList<>();
    for (ChangeRecord change : records.changes()) {
      if (change.packaging().equals(packaging.name())) {
        rows.add(
            row(
                packaging.name(),
                change.line(),
                change.beganS(),
                change.lastedS(),
                change.stepS()));
      }
    }
    Map<String, String> filled = records.packageOf(plant);
    records.stops().stream()
        .filter(StopRecord::isPackageChange)
        .filter(stop -> packaging.name().equals(filled.get(stop.machine())))
        .forEach(rows::add);
    add(
        "packages." + packaging.name() + ".change",
        packaging.changeS(),
        rows,
        waits(packaging.needs()));
  }

  private void screens(Machine.HammerMill mill) {
    List<StopRecord> rows =
        records.stops().stream()
            .filter(stop -> stop.machine().equals(mill.name()))
            .filter(StopRecord::isScreenChange)
            .toList();
    add("machines." + mill.name() + ".screen_change", mill.swapS(), rows, waits(mill.swapNeeds()));
  }

  private void trucks(Delivery delivery) {
    List<TicketRecord> tickets =
        records.tickets().stream().filter(one -> one.crop().equals(delivery.crop())).toList();
    String path = "deliveries." + delivery.crop() + ".";
    delivery.weigh().ifPresent(job -> weigh(path + "weigh.lasts", delivery, job));
    unload(path + "unload.lasts", delivery, tickets);
    delivery
        .trucks()
        .ifPresent(
            trucks -> {
              add(
                  path + "trucks.load.lasts",
                  trucks.load().lastsS(),
                  between(
                      tickets, one -> one.times().loadBeganS(), one -> one.times().loadEndedS()),
                  waits(trucks.load().needs()));
              add(
                  path + "trucks.drive",
                  trucks.driveS(),
                  between(tickets, one -> one.times().loadEndedS(), TicketRecord::inS),
                  List.of("from the field's edge to the gate"));
            });
  }

  private void weigh(String key, Delivery delivery, Job job) {
    ScaleFits scale = new ScaleFits(plant, records);
    List<ScaleFits.Weighing> all = scale.of(delivery);
    if (!all.isEmpty() && !scale.isOneScale(delivery)) {
      String why = "on several scales no ticket says for which a truck waited";
      fits.add(new JobFit(left(key, why), Optional.of(job.lastsS())));
      return;
    }
    double stepS =
        stepS(all.stream().flatMap(of -> Stream.of(of.fromS(), of.toS())).toList(), all.size());
    add(
        key,
        job.lastsS(),
        all.stream()
            .map(of -> row("ticket", of.line(), of.fromS(), of.toS() - of.fromS(), stepS))
            .toList(),
        List.of(
            "from when the truck came, or the one before it was weighed, to the time on its ticket"));
  }

  /** Until the truck leaves where it is not weighed again. */
  private void unload(String key, Delivery delivery, List<TicketRecord> tickets) {
    Job job = delivery.unload();
    List<StopRecord> rows =
        between(tickets, one -> one.times().unloadBeganS(), one -> one.times().unloadEndedS());
    boolean hasBegan = tickets.stream().anyMatch(one -> !Double.isNaN(one.times().unloadBeganS()));
    if (rows.isEmpty() && hasBegan && delivery.weigh().isPresent()) {
      String why =
          "no ticket says when unloading ended, so weighing out is in the time at the gate";
      fits.add(new JobFit(left(key, why), Optional.of(job.lastsS())));
      return;
    }
    add(
        key,
        job.lastsS(),
        rows.isEmpty()
            ? between(tickets, one -> one.times().unloadBeganS(), TicketRecord::outS)
            : rows,
        waits(job.needs()));
  }

  private static List<String> waits(List<String> needs) {
    return needs.isEmpty()
        ? List.of()
        : List.of(
            "the file's \"needs\" waits besides: a time that was noted from when the package was full"
                + " or the truck stood ready has that wait in it twice");
  }

  private static List<StopRecord> between(
      List<TicketRecord> tickets,
      ToDoubleFunction<TicketRecord> from,
      ToDoubleFunction<TicketRecord> to) {
    List<TicketRecord> both =
        tickets.stream()
            .filter(one -> to.applyAsDouble(one) - from.applyAsDouble(one) >= 0)
            .filter(one -> to.applyAsDouble(one) - from.applyAsDouble(one) < LONGEST_S)
            .toList();
    double stepS =
        stepS(
            both.stream()
                .flatMap(one -> Stream.of(from.applyAsDouble(one), to.applyAsDouble(one)))
                .toList(),
            both.size());
    return both.stream()
        .map(
            one ->
                row(
                    "ticket",
                    one.line(),
                    from.applyAsDouble(one),
                    to.applyAsDouble(one) - from.applyAsDouble(one),
                    stepS))
        .collect(Collectors.toList());
  }

  /** Whether more than half of the pairs of times were written in steps of five minutes. */
  private static double stepS(List<Double> pairs, int rows) {
    long fives =
        IntStream.range(0, rows)
            .filter(i -> pairs.get(2 * i) % FIVE_S == 0 && pairs.get(2 * i + 1) % FIVE_S == 0)
            .count();
    return rows >= ENOUGH_FOR_FIVES && 2 * fives > rows ? FIVE_S : MINUTE_S;
  }

  /** A job as the log of stops would have it. */
  private static StopRecord row(
      String what, int line, double beganS, double lastedS, double stepS) {
    return new StopRecord(
        line,
        what,
        "job",
        beganS,
        beganS,
        beganS + lastedS,
        lastedS > 0 ? Repair.WHOLE : Repair.BELOW_A_STEP,
        true,
        stepS);
  }

  private void add(String key, Distribution said, List<StopRecord> rows, List<String> notes) {
    if (!rows.isEmpty()) {
      fits.add(new JobFit(lengths.ofJob(key, rows, notes), Optional.of(said)));
    }
  }

  private static AmountFit left(String key, String why) {
    return new AmountFit(
        key,
        AmountFit.AmountUnit.SECONDS,
        new Taken.Left(why),
        null,
        List.of(),
        Double.NaN,
        List.of());
  }

  /** Away from the plant from one load of a truck to its next one on the same day, in seconds. */
  static double[] away(List<TicketRecord> tickets) {
    Map<String, TicketRecord> last = new HashMap<>();
    List<Double> awayS = new ArrayList<>();
    tickets.stream()
        .filter(one -> !one.times().truck().isEmpty() && !Double.isNaN(one.inS()))
        .sorted(java.util.Comparator.comparingDouble(TicketRecord::inS))
        .forEach(
            one -> {
              TicketRecord before = last.put(one.times().truck(), one);
              double gap = before == null ? Double.NaN : one.inS() - before.outS();
              if (gap > 0 && gap < LONGEST_S / 2) {
                awayS.add(gap);
              }
            });
    return awayS.stream().mapToDouble(Double::doubleValue).toArray();
  }
}
