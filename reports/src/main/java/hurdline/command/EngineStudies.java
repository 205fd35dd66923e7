package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.answer.GridAnswer;
import hurdline.answer.GridKey;
import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.answer.SeasonAnswer;
import hurdline.answer.YardAnswer;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.problem.LocatedProblem;
import hurdline.study.Alternative;
import hurdline.study.CellStore;
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
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Asks the engine. */
final class EngineStudies implements Studies {
  @Override
  public PaperAnswer onPaper(Path file, Chosen chosen) {
    return Paper.of(source(file, chosen), chosen);
  }

  @Override
  public Waiting<RunAnswer> run(Path file, Chosen chosen, Effort effort) {
    Run run = new Run(source(file, chosen), chosen, effort);
    return new Waiting<>(effort.replications(), run::play);
  }

  @Override
  public Waiting<CompareAnswer> compare(Path file, Chosen base, CompareAsk ask, Effort effort) {
    Compare compare = new Compare(source(file, base), base, ask, effort);
    return new Waiting<>(compare.plays(), compare::play, () -> new LivesCost(compare, effort).lines());
  }

  @Override
  public Waiting<SeasonAnswer> season(
      List<Path> paths, SeasonAsk ask, Chosen chosen, Effort effort) {
    Season season = seasonOf(paths, ask, chosen, effort);
    return new Waiting<>(season.plays(), season::play);
  }

  @Override
  public Gridding grid(
      List<Path> paths, List<String> plans, Chosen chosen, List<GridKey> keys, Effort effort) {
    List<Alternative> plants = seasonOf(paths, new SeasonAsk(plans, false), chosen, effort).alternatives();
    return new Asked(
        new Grid(plants.get(0).source(), chosen, "plan", plants, keys, effort));
  }

  private static Season seasonOf(
      List<Path> paths, SeasonAsk ask, Chosen chosen, Effort effort) {
    Map<String, PlantFile> files = new LinkedHashMap<>();
    List<Source> sources = new ArrayList<>();
    for (Path path : paths) {
      PlantFile file = PlantFile.read(path);
      sources.add(source(path, file, List.of()));
      files.putIfAbsent(file.contentHash(), file);
    }
    Season.Warnings warnings =
        (source, changes) -> warnings(files.get(source.contentHash()), source.file(), changes);
    return new Season(sources, ask, chosen, warnings, effort);
  }

  @Override
  public Gridding grid(Path file, Chosen chosen, List<GridKey> keys, Effort effort) {
    Source source = source(file, chosen);
    return new Asked(
        new Grid(
            source,
            chosen,
            "option",
            List.of(new Alternative(chosen.option(), source, chosen.changes())),
            keys,
            effort));
  }

  @Override
  public Gridding grid(
      Path file, Chosen base, CompareAsk ask, List<GridKey> keys, Effort effort) {
    Source source = source(file, base);
    List<Alternative> plants = new Compare(source, base, ask, effort).alternatives();
    return new Asked(new Grid(source, base, "option", plants, keys, effort));
  }

  @Override
  public Waiting<YardAnswer> yard(Path file, Chosen chosen, Effort effort, YardAsk ask) {
    YardSizing sizing = new YardSizing(source(file, chosen), chosen, effort, ask);
    return new Waiting<>(sizing.plays(), sizing::play);
  }

  @Override
  public Gridding grid(
      Path file, Chosen chosen, YardAsk ask, List<GridKey> keys, Effort effort) {
    Source source = source(file, chosen);
    List<Alternative> plants = new YardSizing(source, chosen, effort, ask).alternatives();
    return new Asked(new Grid(source, chosen, "option", plants, keys, effort));
  }

  /** A grid as a verb asks for it. */
  private record Asked(Grid study) implements Studies.Gridding {
    @Override
    public int cells() {
      return study.cells();
    }

    @Override
    public int plants() {
      return study.plants();
    }

    @Override
    public int plays() {
      return study.plays();
    }

    @Override
    public List<String> leftOut() {
      return study.leftOut();
    }

    @Override
    public List<String> settings() {
      return study.settings();
    }

    @Override
    public void trial() {
      study.trial();
    }

    @Override
    public Optional<GridAnswer> play(
        CellStore store, Run.Progress progress, BooleanSupplier stop) {
      return study.play(store, progress, stop);
    }
  }

  private static Source source(Path path, Chosen chosen) {
    PlantFile file = PlantFile.read(path);
    String base = path.getFileName().toString();
    return source(path, file, warnings(file, base, chosen.changes()));
  }

  private static Source source(Path path, PlantFile file, List<LocatedProblem> warnings) {
    String base = path.getFileName().toString();
    return new Source(file.variants(), base, file.contentHash(), Version.text(), warnings);
  }

  /** Warnings go into the record, which must not depend on the folder that the file lies in. */
  private static List<LocatedProblem> warnings(PlantFile file, String base, List<Change> changes) {
    return file.warnings(changes.toArray(Change[]::new)).stream()
        .map(warning -> warning.inFile(base))
        .toList();
  }
}
