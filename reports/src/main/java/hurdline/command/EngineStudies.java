package hurdline.command;

import hurdline.answer.PaperAnswer;
import hurdline.plant.Change;
import hurdline.plant.yaml.PlantFile;
import hurdline.study.Chosen;
import hurdline.study.Effort;
import hurdline.study.Paper;
import hurdline.study.Run;
import hurdline.study.Source;
import java.nio.file.Path;
import java.util.List;

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
