package hurdline.fit;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitCheckRow;
import hurdline.answer.FitRow;
import hurdline.answer.FitRow.Point;
import hurdline.answer.FitRow.TriedLaw;
import hurdline.answer.Header;
import hurdline.answer.Outline;
import hurdline.fit.AmountFit.AmountUnit;
import hurdline.fit.Observations.Seen;
import hurdline.plant.Plant;
import hurdline.plant.Stop;
import hurdline.problem.LocatedProblem;
import hurdline.random.Distribution;
import hurdline.random.RandomStreams;
import hurdline.records.RecordKind;
import hurdline.records.Records;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.statistics.distribution.ChiSquaredDistribution;

/**
 * What was fitted, as an answer has it: figures beside those of the file, and what became of the
 * rows.
 */
public final class FitAnswers {
  private static final double Z = 1.96;
  private static final int MOST_POINTS = 200;
  private static final double HALF = 0.5;

  private final Plant plant;
  private final Records records;
  private final LineLoads loads;
  private final FittedDraws draws;

  private FitAnswers(Plant plant, Records records, LineLoads loads, long seed) {
    draws = new FittedDraws(new RandomStreams(seed));
    this.plant = plant;
    this.records = records;
    this.loads = loads;
  }

  /**
   * Fits and answers.
   *
   * @param folder name of the folder of records
   * @param loads what reaches each machine, by the plant file
   */
  public static FitAnswer of(
      Header header,
      Outline outline,
      String folder,
      Plant plant,
      Records records,
      LineLoads loads) {
    FitAnswers answers = new FitAnswers(plant, records, loads, header.seed());
    AccountRows account = new AccountRows(records.account());
    Fit fit = Fit.of(plant, records, loads, header.seed());
    List<FitRow> rows = new ArrayList<>();
    fit.stops().forEach(stop -> rows.addAll(answers.rows(stop)));
    rows.addAll(new OtherFits(plant, records, answers.draws).rows());
    new ArrivalFits(plant, records, new RandomStreams(header.seed()))
        .all()
        .forEach(
            one ->
                rows.add(
                    answers.row(
                        one,
                        ShownUnit.ofRepair(one.meanInUnit()),
                        answers.stream(one.key()),
                        false)));
    StopClocks clocks = new StopClocks(plant, records, loads);
    answers.addJobs(rows, clocks, new RandomStreams(header.seed()));
    EnergyFits energy = new EnergyFits(plant, records, clocks, answers.draws);
    rows.addAll(energy.rows());
    List<FitCheckRow> checks = new ArrayList<>(new SeasonChecks(plant, records, loads).all());
    checks.addAll(energy.checks());
    return new FitAnswer(
        header,
        outline,
        folder,
        records.hash(),
        rows,
        checks,
        account.files(),
        account.reasons(),
        account.rows(),
        answers.warnings(fit));
  }

  private void addJobs(List<FitRow> rows, StopClocks clocks, RandomStreams streams) {
    RepairFits lengths = new RepairFits(records, clocks, streams, Double.POSITIVE_INFINITY);
    for (JobFits.JobFit job : new JobFits(plant, records, lengths).all()) {
      RecordKind kind =
          job.fit().key().startsWith("deliveries.") ? RecordKind.TICKETS : RecordKind.CHANGES;
      boolean isDoubtful = records.account().setAside(file(kind)) > HALF;
      double meanS = job.fit().meanInUnit();
      ShownUnit unit =
          ShownUnit.ofRepair(
              Double.isNaN(meanS) ? job.said().map(Distribution::mean).orElse(0.0) : meanS);
      rows.add(row(job.fit(), unit, job.said(), isDoubtful));
    }
  }

  private List<FitRow> rows(StopFit stop) {
    Optional<Stop> known = known(stop);
    boolean isDoubtful = records.account().setAside(file(RecordKind.STOPS)) > HALF;
    boolean isWhole =
        !(stop.every().taken() instanceof Taken.Left)
            && !(stop.lasts().taken() instanceof Taken.Left);
    boolean stays = isDoubtful || stop.isNew() && !isWhole;
    ShownUnit everyUnit =
        stop.every().unit() == AmountUnit.KILOGRAMS ? ShownUnit.tonnes() : ShownUnit.hours();
    double repairS = known.map(one -> one.lastsS().mean()).orElse(stop.lasts().meanInUnit());
    List<FitRow> rows = new ArrayList<>();
    rows.add(row(stop.every(), everyUnit, known.map(Stop::every), stays));
    if (stop.isNew() && !stays) {
      rows.add(counted(stop));
    }
    rows.add(row(stop.lasts(), ShownUnit.ofRepair(repairS), known.map(Stop::lastsS), stays));
    return rows;
  }

  /** Times between loads as the plant file has them. */
  private Optional<Distribution> stream(String key) {
    return plant.deliveries().stream()
        .filter(delivery -> key.equals("deliveries." + delivery.crop() + ".loads.every"))
        .flatMap(delivery -> delivery.loads().stream())
        .map(loads -> loads.everyS())
        .findFirst();
  }

  private String file(RecordKind kind) {
    return records.map().files().containsKey(kind)
        ? records.map().files().get(kind).file()
        : kind.file();
  }

  private Optional<Stop> known(StopFit stop) {
    return plant.machines().stream()
        .filter(machine -> machine.name().equals(stop.machine()))
        .flatMap(machine -> machine.common().stops().stream())
        .filter(one -> one.name().equals(stop.stop()))
        .findFirst();
  }

  /** A new stop needs the word too. */
  private static FitRow counted(StopFit stop) {
    String word = stop.counted().name().toLowerCase(Locale.ROOT);
    String key = "machines." + stop.machine() + ".stops." + stop.stop() + ".counted";
    double none = Double.NaN;
    return new FitRow(
        key,
        "",
        "",
        none,
        word,
        word,
        none,
        none,
        none,
        none,
        stop.every().count(),
        stop.every().ended(),
        none,
        "a new stop",
        List.of("the file has no such stop"),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of());
  }

  private FitRow row(AmountFit fit, ShownUnit unit, Optional<Distribution> said, boolean stays) {
    Optional<LawText> before = said.map(law -> LawText.of(law, unit));
    Optional<LawText> after =
        stays ? Optional.empty() : fit.taken().distribution().map(law -> LawText.of(law, unit));
    List<String> notes = new ArrayList<>(fit.notes());
    if (fit.taken() instanceof Taken.Left left) {
      notes.add(0, left.why());
    } else if (stays) {
      notes.add(0, "not written: the log is too doubtful, or a new stop lacks the other half");
    }
    double[] range = range(fit);
    return new FitRow(
        fit.key(),
        unit.word(),
        before.map(LawText::text).orElse(""),
        said.map(law -> unit.of(law.mean())).orElse(Double.NaN),
        after.map(LawText::text).orElse(""),
        after.map(law -> before.map(law::patchOn).orElse(law.text())).orElse(""),
        unit.of(fit.meanInUnit()),
        fit.errorShare(),
        unit.of(range[0]),
        unit.of(range[1]),
        fit.count(),
        fit.ended(),
        fit.goodnessP(),
        fit.verdict(),
        notes,
        points(fit, unit),
        tried(fit, unit),
        fit.taken() instanceof Taken.OfLaw law
            ? Arrays.stream(law.fit().t()).boxed().toList()
            : List.of(),
        fit.taken() instanceof Taken.OfLaw law
            ? Arrays.stream(law.fit().covariance()).flatMapToDouble(Arrays::stream).boxed().toList()
            : List.of(),
        after.isPresent() ? draws.of(fit, unit) : List.of());
  }

  /**
   * The mean's 95 % interval: of an exponential law that few stops tell 2T/χ² with T all that was
   * counted (exact where the counting ended at a stop); else on the logarithm by the error.
   */
  private static double[] range(AmountFit fit) {
    double mean = fit.meanInUnit();
    int n = fit.ended();
    boolean isFew =
        fit.taken() instanceof Taken.OfLaw law
            && law.fit().law() == Law.EXPONENTIAL
            && n < LawChoice.FEW
            && fit.key().endsWith(".every");
    if (isFew) {
      double twice = 2 * mean * n;
      return new double[] {
        twice / ChiSquaredDistribution.of(2.0 * n + 2).inverseCumulativeProbability(0.975),
        twice / ChiSquaredDistribution.of(2.0 * n).inverseCumulativeProbability(0.025)
      };
    }
    return new double[] {
      mean * Math.exp(-Z * fit.errorShare()), mean * Math.exp(Z * fit.errorShare())
    };
  }

  private static List<TriedLaw> tried(AmountFit fit, ShownUnit unit) {
    return fit.candidates().stream()
        .map(
            one ->
                new TriedLaw(
                    one.fit().law().word(),
                    one.fit().aicc(),
                    one.a2(),
                    one.p(),
                    unit.of(one.fit().mean())))
        .toList();
  }

  /**
   * Amounts that ended with the share of all at or below them (Kaplan and Meier, in the middle of
   * its step).
   */
  private static List<Point> points(AmountFit fit, ShownUnit unit) {
    if (!(fit.taken() instanceof Taken.OfLaw taken)) {
      return List.of();
    }
    LawFit law = taken.fit();
    List<Seen> rising =
        fit.seen().all().stream()
            .sorted(java.util.Comparator.comparingDouble(FitAnswers::middle))
            .toList();
    List<Point> points = new ArrayList<>();
    double left = 1;
    for (int i = 0; i < rising.size(); i++) {
      Seen one = rising.get(i);
      if (!one.isGoing()) {
        double after = left * (1 - 1.0 / (rising.size() - i));
        double share = 1 - (left + after) / 2;
        left = after;
        double lawShare =
            law.law()
                .shareSeen(
                    middle(one) / law.unit(),
                    law.t(),
                    law.low() / law.unit(),
                    Double.POSITIVE_INFINITY);
        points.add(
            new Point(
                unit.of(middle(one)), share, lawShare, unit.of(law.distribution().at(share))));
      }
    }
    int step = points.size() / MOST_POINTS + 1;
    return java.util.stream.IntStream.range(0, points.size())
        .filter(i -> i % step == 0 || i == points.size() - 1)
        .mapToObj(points::get)
        .toList();
  }

  private static double middle(Seen one) {
    return one.isGoing() ? one.low() : (one.low() + one.high()) / 2;
  }

  private List<LocatedProblem> warnings(Fit fit) {
    List<LocatedProblem> warnings = new ArrayList<>(records.cautions());
    warnings.addAll(FormShares.warnings(plant, file(RecordKind.MADE)));
    for (StopFit stop : fit.stops()) {
      stop.warnings().forEach(said -> warnings.add(warning(stop, said)));
    }
    return warnings;
  }

  private LocatedProblem warning(StopFit stop, String said) {
    int at = said.indexOf("): ");
    String found = at < 0 ? said : said.substring(0, at + 1);
    String then =
        at < 0
            ? "the plant file's word stays; change it there if you agree"
            : said.substring(at + 3);
    return new LocatedProblem(
        LocatedProblem.Severity.WARNING,
        file(RecordKind.STOPS),
        0,
        0,
        stop.key(),
        found,
        then,
        "",
        "");
  }
}
