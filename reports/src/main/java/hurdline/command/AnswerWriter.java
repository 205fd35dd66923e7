package hurdline.command;

import hurdline.answer.Answer;
import hurdline.chart.kit.Chart;
import hurdline.service.PreparedStudy;
import hurdline.table.AnswerFolder;
import hurdline.table.Table;
import hurdline.text.Wording;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
import java.util.function.Supplier;

/**
 * Simulates a study for a verb and reports what it found: files, words on the terminal, exit code.
 */
final class AnswerWriter {
  private final CommandContext setting;
  private final OutputFlags shown;
  private final Wording wording;

  /**
   * @throws CallException if the answer cannot be shown as it was asked for
   */
  AnswerWriter(CommandContext setting, OutputFlags shown) {
    this.setting = setting;
    this.shown = shown;
    wording = shown.wording();
  }

  /**
   * What an answer is made into besides its record; the tables at once, the rest when it is asked
   * for.
   *
   * @param lines the answer in words for a terminal of so many columns
   */
  record Parts(
      List<Table> tables,
      Supplier<List<Chart>> charts,
      Supplier<String> page,
      IntFunction<List<String>> lines) {}

  /** How an answer of one kind is made into its parts. */
  interface Shape<A extends Answer> {
    Parts of(A answer, Wording wording);
  }

  /**
   * The folder for an answer.
   *
   * @param file the plant file, beside which the answer lies by default
   * @param out the folder that was asked for; null for a dated one beside the file
   */
  static AnswerFolder folder(Path file, Path out) throws IOException {
    return out == null ? AnswerFolder.beside(file, LocalDateTime.now()) : AnswerFolder.named(out);
  }

  /**
   * Simulates and reports; the exit code.
   *
   * @param file the plant file, beside which the answer lies by default
   * @param out the folder that was asked for; null for a dated one beside the file
   */
  <A extends Answer> int simulate(Path file, Path out, PreparedStudy<A> study, Shape<A> shape)
      throws IOException {
    return simulate(List.of(file), out, study, shape);
  }

  /** The same of several plant files; the answer lies beside the first by default. */
  <A extends Answer> int simulate(
      List<Path> files, Path out, PreparedStudy<A> study, Shape<A> shape) throws IOException {
    AskedPlants asked = AskedPlants.of(setting.call(), files);
    AnswerFolder folder = folder(files.get(0), out);
    try (ChartThread drawing = ChartThread.begin()) {
      if (!shown.quiet()) {
        study
            .lives()
            .ifPresent(
                lives -> LivesCost.lines(lives, study.calendars()).forEach(setting.err()::println));
      }
      Optional<A> found = StudyRunner.inSight(setting, shown, study.calendars(), study.how());
      if (found.isEmpty()) {
        setting.err().println("Stopped before the first replication was done; nothing is written.");
        return ExitCode.STOPPED.number();
      }
      report(found.get(), shape, new AnswerFiles(folder, drawing, asked));
      return (found.get().header().stopped() ? ExitCode.STOPPED : ExitCode.DONE).number();
    } finally {
      folder.giveBack();
    }
  }

  /**
   * Writes the files of an answer and tells it on the terminal, which it does too where they cannot
   * be written.
   */
  <A extends Answer> void report(A answer, Shape<A> shape, AnswerFiles files) throws IOException {
    Parts parts = shape.of(answer, wording.reading(answer));
    AnswerPrinter told = new AnswerPrinter(setting, shown);
    try {
      files.write(answer, parts);
    } catch (IOException | RuntimeException fault) {
      told.tell(answer, parts.lines().apply(setting.columns()));
      throw fault;
    }
    told.tell(answer, parts.lines().apply(setting.columns()), files.folder());
  }
}
