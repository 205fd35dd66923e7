package hurdline.command;

import hurdline.answer.GridAnswer;
import hurdline.answer.SimulatedCell;
import hurdline.chart.grid.GridCharts;
import hurdline.page.ReportPage;
import hurdline.service.PreparedGrid;
import hurdline.study.grid.CellStore;
import hurdline.study.grid.Grid;
import hurdline.study.replicate.RunSettings;
import hurdline.table.AnswerFolder;
import hurdline.table.CellFolder;
import hurdline.table.GridTables;
import hurdline.text.GridWords;
import hurdline.text.Wording;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * Simulates a grid for any verb: says what it costs, keeps what is finished, goes on where it was
 * stopped.
 */
final class GridCommand {
  private final CommandContext setting;
  private final OutputFlags shown;
  private final RunSettings effort;

  GridCommand(CommandContext setting, OutputFlags shown, RunSettings effort) {
    this.setting = setting;
    this.shown = shown;
    this.effort = effort;
  }

  /**
   * Simulates the grid and reports it; the exit code.
   *
   * @param file the plant file, beside which the answer lies by default
   * @param out the folder that was asked for; null for a dated one beside the file
   */
  int simulate(Path file, Path out, PreparedGrid prepared) throws IOException {
    return simulate(List.of(file), out, prepared);
  }

  /** The same of several plant files; the answer lies beside the first by default. */
  int simulate(List<Path> files, Path out, PreparedGrid prepared) throws IOException {
    Path file = files.get(0);
    AskedPlants asked = AskedPlants.of(setting.call(), files);
    Grid grid = prepared.grid();
    AnswerWriter reporting = new AnswerWriter(setting, shown);
    BegunAnswer begun = new BegunAnswer("a grid", CellFolder.name());
    AnswerFolder folder =
        begun.claimed(
            file, out, grid.settings(), made -> new CellFolder(made).begin(grid.settings()));
    CellFolder cells = new CellFolder(folder);
    try (ChartThread drawing = ChartThread.begin()) {
      int kept = cells.count();
      if (!shown.quiet()) {
        new GridCost(grid, effort, kept, folder.path()).tell(setting.err());
      }
      Optional<GridAnswer> found =
          StudyRunner.inSight(
              setting,
              shown,
              grid.simulations(),
              (progress, stop) -> prepared.simulate(new OnDisk(cells), progress, stop));
      if (found.isEmpty()) {
        return stopped(grid, folder, cells);
      }
      reporting.report(found.get(), GridCommand::parts, new AnswerFiles(folder, drawing, asked));
      cells.clear();
      return ExitCode.DONE.number();
    } catch (UncheckedIOException full) {
      throw new CallException(
          "writing failed ("
              + full.getCause().getMessage()
              + "): "
              + cells.count()
              + " of "
              + grid.cells()
              + " cells are kept; make room, and the same call with --out "
              + folder.path()
              + " goes on from there");
    } finally {
      folder.giveBack();
    }
  }

  private int stopped(Grid grid, AnswerFolder folder, CellFolder cells) throws IOException {
    int done = cells.count();
    if (done == 0) {
      cells.clear();
      setting.err().println("Stopped before the first cell was done; nothing is written.");
    } else {
      setting.err().println(kept(done + " of " + grid.cells() + " cells are", folder));
    }
    return ExitCode.STOPPED.number();
  }

  /** What a call that was stopped has kept, {@code 3 of 9 cells are}, and how it goes on. */
  static String kept(String done, AnswerFolder folder) {
    return "Stopped: "
        + done
        + " done and kept; the same call with --out "
        + folder.path()
        + " goes on from there.";
  }

  static AnswerWriter.Parts parts(GridAnswer answer, Wording wording) {
    GridCharts figures = new GridCharts(answer, wording);
    return new AnswerWriter.Parts(
        new GridTables(answer).all(),
        figures::all,
        () -> ReportPage.html(answer, wording, figures),
        width -> new GridWords(answer, wording).lines(width));
  }

  /** Cells in their folder. */
  private record OnDisk(CellFolder cells) implements CellStore {
    @Override
    public Optional<SimulatedCell> kept(int cell) {
      try {
        return cells.read(cell);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }

    @Override
    public void keep(SimulatedCell cell) {
      try {
        cells.write(cell);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
  }
}
