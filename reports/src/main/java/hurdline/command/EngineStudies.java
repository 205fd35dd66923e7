package hurdline.command;

import hurdline.answer.CompareAnswer;
import hurdline.answer.PaperAnswer;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.Chosen;
import hurdline.study.Compare;
import hurdline.study.CompareAsk;
import hurdline.study.Effort;
import hurdline.study.Paper;
import hurdline.study.Run;
import hurdline.study.Source;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Asks the engine. */
final class EngineStudies implements Studies {
  @Override
  public PaperAnswer onPaper(Path file, Chosen chosen) {
    return Paper.of(source(file, chosen), chosen);
  }

  @Override
  public Playing run(Path file, Chosen chosen, Effort effort) {
    return new Run(source(file, chosen), chosen, effort)::play;
  }

  @Override
  public Comparing compare(Path file, Chosen base, CompareAsk ask, Effort effort) {
    return new Compared(new Compare(source(file, base), base, ask, effort));
  }

  private record Compared(Compare study) implements Comparing {
    @Override
    public int plays() {
      return study.plays();
    }

    @Override
    public Optional<CompareAnswer> play(Run.Progress progress, BooleanSupplier stop) {
      return study.play(progress, stop);
    }
  }

  private static Source source(Path path, Chosen chosen) {
    PlantFile file = PlantFile.read(path);
    String base = path.getFileName().toString();
    List<String> warnings = file.warnings(chosen.changes().toArray(Change[]::new));
    return new Source(
        file.variants(),
        base,
        file.contentHash(),
        Version.text(),
        warnings.stream().map(line -> withoutFolder(line, file.name(), base)).toList());
  }

  /** Warnings go into the record, which must not hang on the folder that the file lies in. */
  private static String withoutFolder(String line, String name, String base) {
    return line.startsWith(name) ? base + line.substring(name.length()) : line;
  }
}
