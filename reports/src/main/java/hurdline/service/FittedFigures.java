package hurdline.service;

import hurdline.answer.FitAnswer;
import hurdline.answer.FitRow;
import hurdline.fit.FittedPatch;
import hurdline.plant.InputDraws;
import hurdline.plant.yaml.ValuesInPlace;
import hurdline.records.DrawsFile;
import hurdline.records.RecordTemplates;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Fitted figures on their way into a plant file. */
public final class FittedFigures {
  /** Only of a stop that the file does not have is it fitted on what it is counted. */
  private static final String COUNTED = ".counted";

  private FittedFigures() {}

  /** As a patch with a comment behind each. */
  public static String patch(FitAnswer answer) {
    return FittedPatch.text(answer);
  }

  /**
   * The text of the plant file with the figures in their places.
   *
   * @throws hurdline.plant.ProblemsException if that cannot be done
   */
  public static String inPlace(Path plant, FitAnswer answer) {
    return ValuesInPlace.text(plant, values(answer));
  }

  /**
   * The same of a text.
   *
   * @param name of its file, for problems
   */
  public static String inPlace(String name, String text, FitAnswer answer) {
    return ValuesInPlace.text(name, text, values(answer));
  }

  /** Values by path; a stop that the file does not have is one value. */
  private static Map<String, String> values(FitAnswer answer) {
    List<String> added =
        answer.figures().stream()
            .map(FitRow::key)
            .filter(key -> key.endsWith(COUNTED))
            .map(key -> key.substring(0, key.length() - COUNTED.length()))
            .toList();
    Map<String, String> values = new LinkedHashMap<>();
    for (FitRow row : answer.figures()) {
      int last = row.key().lastIndexOf('.');
      String above = row.key().substring(0, last);
      if (row.isFitted() && added.contains(above)) {
        String part = row.key().substring(last + 1) + ": " + row.fitted();
        values.merge(
            above,
            "{" + part + "}",
            (one, more) -> one.substring(0, one.length() - 1) + ", " + more.substring(1));
      } else if (row.isFitted()) {
        values.put(row.key(), row.fitted());
      }
    }
    return values;
  }

  /**
   * What a patch file sets, each as {@code KEY=VALUE}.
   *
   * @throws hurdline.plant.ProblemsException if it is no patch
   */
  public static List<String> ofPatch(Path file) {
    return ValuesInPlace.ofPatch(file);
  }

  /**
   * Joint draws of inputs that a file holds.
   *
   * @throws hurdline.plant.ProblemsException if it is no such file
   */
  public static InputDraws draws(Path file) {
    return DrawsFile.read(file);
  }

  /** Empty files of records with their heads, by name. */
  public static Map<String, String> emptyRecords() {
    return RecordTemplates.all();
  }
}
