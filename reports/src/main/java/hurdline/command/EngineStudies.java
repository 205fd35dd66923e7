package hurdline.command;

import hurdline.answer.PaperAnswer;
import hurdline.answer.RunAnswer;
import hurdline.plant.yaml.PlantFile;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;

/** Asks the engine. */
final class EngineStudies implements Studies {
  @Override
  public Prepared prepare(PlantChoice choice) {
    PlantFile file = PlantFile.read(choice.file());
    return new Prepared() {
      @Override
      public PaperAnswer onPaper() {
        throw new UnsupportedOperationException("the engine is not wired yet for " + file.name());
      }

      @Override
      public Optional<RunAnswer> run(Effort effort, IntConsumer done, BooleanSupplier stop) {
        throw new UnsupportedOperationException("the engine is not wired yet for " + file.name());
      }
    };
  }
}
