package hurdline.command;

import hurdline.answer.RunAnswer;
import hurdline.chart.Figure;
import hurdline.chart.Figures;
import hurdline.page.ReportPage;
import hurdline.table.AnswerFolder;
import hurdline.table.RecordFile;
import hurdline.table.RunTables;
import hurdline.table.Table;
import hurdline.words.Wording;
import java.io.IOException;

/** Writes the files of a run; the record last, so that a folder with a record is whole. */
final class RunFiles {
  private RunFiles() {}

  static void write(RunAnswer answer, AnswerFolder folder, Wording wording) throws IOException {
    for (Table table : new RunTables(answer).all()) {
      folder.write(table.file(), table::write);
    }
    for (Figure figure : new Figures(answer, wording).all()) {
      folder.write("charts/" + figure.name() + ".svg", out -> out.write(figure.file()));
    }
    folder.write("report.html", out -> out.write(ReportPage.html(answer, wording)));
    folder.write("record.json", out -> RecordFile.write(answer, out));
  }
}
