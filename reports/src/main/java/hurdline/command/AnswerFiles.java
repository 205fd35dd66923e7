package hurdline.command;

import hurdline.answer.Answer;
import hurdline.chart.kit.Chart;
import hurdline.table.AnswerFolder;
import hurdline.table.RecordFile;
import hurdline.table.Table;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Writes the files of an answer; the record last, so that a folder with a record is whole. */
final class AnswerFiles {
  private final AnswerFolder folder;
  private final ChartThread drawing;
  private final AskedPlants asked;
  private final List<String> whole = new ArrayList<>();

  AnswerFiles(AnswerFolder folder, ChartThread drawing, AskedPlants asked) {
    this.folder = folder;
    this.drawing = drawing;
    this.asked = asked;
  }

  Path folder() {
    return folder.path();
  }

  /** Charts and page are made beside the tables and the record. */
  void write(Answer answer, AnswerWriter.Parts parts) throws IOException {
    ChartThread.Part<List<Chart>> drawn = drawing.of(parts.charts());
    ChartThread.Part<String> composed = drawing.of(parts.page());
    for (Table table : parts.tables()) {
      write(table.file(), table::write);
    }
    StringWriter record = new StringWriter();
    RecordFile.write(answer, record);
    write(drawn, composed);
    for (Map.Entry<String, String> plant : asked.texts().entrySet()) {
      write(plant.getKey(), out -> out.write(plant.getValue()));
    }
    write("record.json", out -> out.write(record.toString()));
  }

  /** Charts and page alone. */
  void writePage(AnswerWriter.Parts parts) throws IOException {
    write(drawing.of(parts.charts()), drawing.of(parts.page()));
  }

  private void write(ChartThread.Part<List<Chart>> drawn, ChartThread.Part<String> composed)
      throws IOException {
    for (Chart figure : drawn.get()) {
      write("charts/" + figure.name() + ".svg", out -> out.write(figure.file()));
    }
    write("report.html", out -> out.write(composed.get()));
  }

  private void write(String name, AnswerFolder.Content content) throws IOException {
    try {
      folder.write(name, content);
      whole.add(name);
    } catch (IOException fault) {
      throw new WritingFault(folder.path(), whole, name, fault);
    }
  }
}
