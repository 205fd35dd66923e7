package hurdline.service;

import hurdline.answer.CompareAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.plant.Change;
import hurdline.plant.ProblemsException;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.service.PreparedStudy.ServiceLivesWork;
import hurdline.study.Alternative;
import hurdline.study.Chosen;
import hurdline.study.Compare;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.Grid;
import hurdline.study.Paper;
import hurdline.study.Run;
import hurdline.study.Season;
import hurdline.study.SeasonAsk;
import hurdline.study.Source;
import hurdline.study.YardAsk;
import hurdline.study.YardSizing;
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
  public List<LocatedProblem> problems(PlantText plant, Chosen chosen) {
    try {
      Source source = source(plant, chosen);
      source.variants().with(chosen.changes().toArray(Change[]::new));
      return source.warnings();
    } catch (ProblemsException wrong) {
      return wrong.problems();
    }
  }

  @Override
  public PaperAnswer onPaper(PlantText plant, Chosen chosen) {
    return Paper.of(source(plant, chosen), chosen);
  }

  @Override
  public PreparedStudy<RunAnswer> run(PlantText plant, Chosen chosen, Effort effort) {
    return new PreparedStudy<>(effort.replications(), inRanges(plant, chosen, effort)::play);
  }

  @Override
  public Run inRanges(PlantText plant, Chosen chosen, Effort effort) {
    return new Run(source(plant, chosen), chosen, effort);
  }

  @Override
  public PreparedStudy<CompareAnswer> compare(PlantText plant, Chosen base, CompareAsk ask, Effort effort) {
    Compare compare = new Compare(source(plant, base), base, ask, effort);
    int calendars = compare.livesPlays();
    Optional<ServiceLivesWork> lives =
        calendars == 0
            ? Optional.empty()
            : Optional.of(new ServiceLivesWork(
                    compare.lives(), calendars, compare.breakEvenWork(), effort.threads(), compare::trial));
    return new PreparedStudy<>(compare.plays(), compare::play, lives);
  }

  @Override
  public PreparedStudy<SeasonAnswer> season(List<PlantText> plants, SeasonAsk ask, Chosen chosen, Effort effort) {
    Season season = seasonOf(plants, ask, chosen, effort);
    return new PreparedStudy<>(season.plays(), season::play);
  }

  @Override
  public PreparedStudy<YardAnswer> yard(PlantText plant, Chosen chosen, Effort effort, YardAsk ask) {
    YardSizing sizing = new YardSizing(source(plant, chosen), chosen, effort, ask);
    return new PreparedStudy<>(sizing.plays(), sizing::play);
  }

  @Override
  public PreparedGrid grid(PlantText plant, Chosen chosen, List<GridKey> keys, Effort effort) {
    Source source = source(plant, chosen);
    List<Alternative> alone = List.of(new Alternative(chosen.option(), source, chosen.changes()));
    return new PreparedGrid(new Grid(source, chosen, "option", alone, keys, effort));
  }

  @Override
  public PreparedGrid grid(PlantText plant, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort) {
    Source source = source(plant, base);
    List<Alternative> plants = new Compare(source, base, ask, effort).alternatives();
    return new PreparedGrid(new Grid(source, base, "option", plants, keys, effort));
  }

  @Override
  public PreparedGrid grid(
      List<PlantText> plants, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort) {
    List<Alternative> all = seasonOf(plants, new SeasonAsk(plans, false), chosen, effort).alternatives();
    return new PreparedGrid(new Grid(all.get(0).source(), chosen, "plan", all, keys, effort));
  }

  @Override
  public PreparedGrid grid(PlantText plant, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort) {
    Source source = source(plant, chosen);
    List<Alternative> plants = new YardSizing(source, chosen, effort, ask).alternatives();
    return new PreparedGrid(new Grid(source, chosen, "option", plants, keys, effort));
  }

  private static Season seasonOf(List<PlantText> plants, SeasonAsk ask, Chosen chosen, Effort effort) {
    Map<String, PlantFile> files = new LinkedHashMap<>();
    List<Source> sources = new ArrayList<>();
    for (PlantText plant : plants) {
      PlantFile file = plant.read();
      sources.add(source(plant, file, List.of()));
      files.putIfAbsent(file.contentHash(), file);
    }
    Season.Warnings warnings =
        (source, changes) -> warnings(files.get(source.contentHash()), source.file(), changes);
    return new Season(sources, ask, chosen, warnings, effort);
  }

  private static Source source(PlantText plant, Chosen chosen) {
    PlantFile file = plant.read();
    return source(plant, file, warnings(file, plant.name(), chosen.changes()));
  }

  private static Source source(PlantText plant, PlantFile file, List<LocatedProblem> warnings) {
    return new Source(file.variants(), plant.name(), file.contentHash(), version(), warnings);
  }

  /** Warnings go into the record, which must not depend on the folder that the file lies in. */
  private static List<LocatedProblem> warnings(PlantFile file, String base, List<Change> changes) {
    return file.warnings(changes.toArray(Change[]::new)).stream()
        .map(warning -> warning.inFile(base))
        .toList();
  }
}
