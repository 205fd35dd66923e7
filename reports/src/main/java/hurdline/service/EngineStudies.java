package hurdline.service;

import hurdline.answer.BacktestAnswer;
import hurdline.answer.Capacity;
import hurdline.answer.CheckAnswer;
import hurdline.answer.CompareAnswer;
import hurdline.answer.FitAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.Header;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.fit.FitAnswers;
import hurdline.fit.LineLoads;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.records.Records;
import hurdline.records.RecordsFolder;
import hurdline.service.PreparedStudy.ServiceLivesWork;
import hurdline.study.PlantChanges;
import hurdline.study.PlantOrigin;
import hurdline.study.RatedCapacity;
import hurdline.study.Scenario;
import hurdline.study.backtest.Backtest;
import hurdline.study.choose.BlockRunner;
import hurdline.study.choose.Choose;
import hurdline.study.choose.ChooseAsk;
import hurdline.study.choose.Cluster;
import hurdline.study.compare.Compare;
import hurdline.study.compare.CompareAsk;
import hurdline.study.grid.Grid;
import hurdline.study.replicate.RunSettings;
import hurdline.study.rest.RestStudy;
import hurdline.study.run.Run;
import hurdline.study.season.Season;
import hurdline.study.season.SeasonAsk;
import hurdline.study.yard.YardAsk;
import hurdline.study.yard.YardSizing;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Studies by the engine, in this program. */
public final class EngineStudies implements Studies {
  /** The version of the program that answers name. */
  public static String version() {
    String version = EngineStudies.class.getPackage().getImplementationVersion();
    return version == null ? "unpacked" : version;
  }

  @Override
  public List<LocatedProblem> problems(PlantText plant, PlantChanges chosen) {
    try {
      PlantOrigin source = source(plant, chosen);
      source.variants().with(chosen.changes().toArray(Change[]::new));
      return source.warnings();
    } catch (ProblemsException wrong) {
      return wrong.problems();
    }
  }

  @Override
  public CheckAnswer onPaper(PlantText plant, PlantChanges chosen) {
    return RatedCapacity.of(source(plant, chosen), chosen);
  }

  @Override
  public PreparedStudy<RunAnswer> run(PlantText plant, PlantChanges chosen, RunSettings effort) {
    Run run = inRanges(plant, chosen, effort);
    return new PreparedStudy<>(run.simulations(), run::simulate);
  }

  @Override
  public PreparedStudy<RunAnswer> restOfSeason(
      PlantText plant, PlantChanges chosen, Path records, LocalDate asOf, RunSettings effort) {
    PlantOrigin source = source(plant, chosen);
    Records read = RecordsFolder.read(records, source.variants().with(chosen.asArray()));
    String folder = records.toAbsolutePath().normalize().getFileName().toString();
    LineLoads loads = loads(RatedCapacity.of(source, chosen).capacity());
    RestStudy rest = new RestStudy(source, chosen, effort, read, folder, asOf, loads);
    return new PreparedStudy<>(rest.simulations(), rest::simulate);
  }

  @Override
  public Run inRanges(PlantText plant, PlantChanges chosen, RunSettings effort) {
    return new Run(source(plant, chosen), chosen, effort);
  }

  @Override
  public PreparedStudy<CompareAnswer> compare(
      PlantText plant, PlantChanges base, CompareAsk ask, RunSettings effort) {
    Compare compare = new Compare(source(plant, base), base, ask, effort);
    int calendars = compare.livesSimulations();
    Optional<ServiceLivesWork> lives =
        calendars == 0
            ? Optional.empty()
            : Optional.of(
                new ServiceLivesWork(
                    compare.lives(),
                    calendars,
                    compare.breakEvenWork(),
                    effort.threads(),
                    compare::trial));
    return new PreparedStudy<>(compare.simulations(), compare::simulate, lives);
  }

  @Override
  public PreparedStudy<SeasonAnswer> season(
      List<PlantText> plants, SeasonAsk ask, PlantChanges chosen, RunSettings effort) {
    Season season = seasonOf(plants, ask, chosen, effort);
    return new PreparedStudy<>(season.simulations(), season::simulate);
  }

  @Override
  public PreparedStudy<YardAnswer> yard(
      PlantText plant, PlantChanges chosen, RunSettings effort, YardAsk ask) {
    YardSizing sizing = new YardSizing(source(plant, chosen), chosen, effort, ask);
    return new PreparedStudy<>(sizing.simulations(), sizing::simulate);
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges chosen, List<GridKey> keys, RunSettings effort) {
    PlantOrigin source = source(plant, chosen);
    List<Scenario> alone = List.of(new Scenario(chosen.option(), source, chosen.changes()));
    return new PreparedGrid(new Grid(source, chosen, "option", alone, keys, effort));
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges base, CompareAsk ask, List<GridKey> keys, RunSettings effort) {
    PlantOrigin source = source(plant, base);
    List<Scenario> plants = new Compare(source, base, ask, effort).alternatives();
    return new PreparedGrid(new Grid(source, base, "option", plants, keys, effort));
  }

  @Override
  public PreparedGrid grid(
      List<PlantText> plants,
      List<String> plans,
      PlantChanges chosen,
      List<GridKey> keys,
      RunSettings effort) {
    List<Scenario> all =
        seasonOf(plants, new SeasonAsk(plans, false), chosen, effort).alternatives();
    return new PreparedGrid(new Grid(all.get(0).source(), chosen, "plan", all, keys, effort));
  }

  @Override
  public PreparedGrid grid(
      PlantText plant, PlantChanges chosen, YardAsk ask, List<GridKey> keys, RunSettings effort) {
    PlantOrigin source = source(plant, chosen);
    List<Scenario> plants = new YardSizing(source, chosen, effort, ask).alternatives();
    return new PreparedGrid(new Grid(source, chosen, "option", plants, keys, effort));
  }

  @Override
  public PreparedChoice choose(
      PlantText plant,
      PlantChanges chosen,
      ChooseAsk ask,
      RunSettings effort,
      Optional<String> on) {
    Optional<Cluster> cluster = on.map(Clusters::at);
    PlantFile file = plant.read();
    PlantOrigin source = source(plant, file, warnings(file, plant.name(), chosen.changes()));
    Choose choose = new Choose(source, chosen, file.choices(), ask, effort);
    return cluster
        .map(
            found ->
                new PreparedChoice(
                    choose,
                    (store, progress, stop, timeUp) -> {
                      try (BlockRunner runner =
                          found.open(on.get(), effort.threads(), file.texts(), choose.recipe())) {
                        return choose.simulate(runner, store, progress, stop, timeUp);
                      }
                    }))
        .orElseGet(() -> new PreparedChoice(choose));
  }

  @Override
  public PreparedStudy<BacktestAnswer> backtest(
      PlantText plant, PlantChanges chosen, Path records, RunSettings effort) {
    PlantOrigin source = source(plant, chosen);
    Records read = RecordsFolder.read(records, source.variants().with(chosen.asArray()));
    String folder = records.toAbsolutePath().normalize().getFileName().toString();
    Backtest backtest = new Backtest(source, chosen, read, folder, effort);
    return new PreparedStudy<>(backtest.simulations(), backtest::simulate);
  }

  @Override
  public FitAnswer fit(PlantText plant, Path records, long seed) {
    CheckAnswer check = onPaper(plant, PlantChanges.base());
    PlantFile file = plant.read();
    Records read = RecordsFolder.read(records, file.plant());
    String folder = records.toAbsolutePath().normalize().getFileName().toString();
    return FitAnswers.of(
        seeded(check.header(), seed),
        check.outline(),
        folder,
        file.plant(),
        read,
        loads(check.capacity()));
  }

  private static Header seeded(Header of, long seed) {
    return new Header(
        of.plant(),
        of.file(),
        of.contentHash(),
        of.version(),
        of.option(),
        of.changes(),
        seed,
        0,
        0,
        "",
        false,
        of.currency(),
        of.from(),
        of.to());
  }

  private static LineLoads loads(Capacity capacity) {
    Map<String, Map<String, Double>> loads = new LinkedHashMap<>();
    for (Capacity.Line line : capacity.lines()) {
      line.machines()
          .forEach(
              machine ->
                  loads
                      .computeIfAbsent(line.line(), l -> new LinkedHashMap<>())
                      .put(machine.machine(), machine.loadTPerT()));
    }
    return new LineLoads(loads);
  }

  private static Season seasonOf(
      List<PlantText> plants, SeasonAsk ask, PlantChanges chosen, RunSettings effort) {
    Map<String, PlantFile> files = new LinkedHashMap<>();
    List<PlantOrigin> sources = new ArrayList<>();
    for (PlantText plant : plants) {
      PlantFile file = plant.read();
      sources.add(source(plant, file, List.of()));
      files.putIfAbsent(file.contentHash(), file);
    }
    Season.Warnings warnings =
        (source, changes) -> warnings(files.get(source.contentHash()), source.file(), changes);
    return new Season(sources, ask, chosen, warnings, effort);
  }

  private static PlantOrigin source(PlantText plant, PlantChanges chosen) {
    PlantFile file = plant.read();
    return source(plant, file, warnings(file, plant.name(), chosen.changes()));
  }

  private static PlantOrigin source(
      PlantText plant, PlantFile file, List<LocatedProblem> warnings) {
    return new PlantOrigin(file.variants(), plant.name(), file.contentHash(), version(), warnings);
  }

  /** Warnings go into the record, which must not depend on the folder that the file lies in. */
  private static List<LocatedProblem> warnings(PlantFile file, String base, List<Change> changes) {
    return file.warnings(changes.toArray(Change[]::new)).stream()
        .map(warning -> warning.inFile(base))
        .toList();
  }
}
