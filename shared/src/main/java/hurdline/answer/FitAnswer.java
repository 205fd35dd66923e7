package hurdline.answer;

import hurdline.problem.LocatedProblem;
import java.util.List;

/**
 * What {@code fit} found in a plant's records.
 *
 * @param header the plant whose figures were fitted; 0 replications
 * @param outline of the plant as the file has it
 * @param records name of the folder of records, without those above it
 * @param recordsHash hash of all files in it
 * @param figures a row for each figure, fitted or left
 * @param checks what the records say that is no key of the file
 * @param files what became of each file's rows
 * @param reasons why rows were set aside or read otherwise than written, the gravest first
 * @param rows one for each row that was read; empty after reading {@code record.json}
 * @param warnings what is to be known before the figures are used
 */
public record FitAnswer(
    Header header,
    Outline outline,
    String records,
    String recordsHash,
    List<FitRow> figures,
    List<FitCheckRow> checks,
    List<RecordFileRow> files,
    List<RecordReasonRow> reasons,
    List<RecordRow> rows,
    List<LocatedProblem> warnings)
    implements Answer {
  public FitAnswer {
    figures = List.copyOf(figures);
    checks = List.copyOf(checks);
    files = List.copyOf(files);
    reasons = List.copyOf(reasons);
    rows = rows == null ? List.of() : List.copyOf(rows);
    warnings = List.copyOf(warnings);
  }
}
