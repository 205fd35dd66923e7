package hurdline.service;

import hurdline.plant.yaml.FormValues;
import hurdline.plant.yaml.PlantEdit;
import java.util.List;
import java.util.Map;

/** Single values put into the text of a plant, comments and layout kept. */
public final class PlantEdits {
  private PlantEdits() {}

  /**
   * What is put where in a text.
   *
   * @param from in characters from the top
   * @param to behind the last that goes
   * @param with what comes in its place
   */
  public record Edit(int from, int to, String with) {}

  /**
   * The edit that sets a value.
   *
   * @param path as of {@code --set}
   * @param typed as a person types it into a box: an amount, a word, or a map or list in brackets
   * @throws hurdline.plant.ProblemsException with the reason why it cannot be set there
   */
  public static Edit setting(String text, String path, String typed) {
    PlantEdit edit = PlantEdit.setting(text, path, PlantEdit.word(typed));
    return new Edit(edit.from(), edit.to(), edit.with());
  }

  /**
   * A figure of a text.
   *
   * @param group of the form that shows it, such as a line
   * @param part within the group, such as a machine; may be empty
   * @param path as of {@code --set}
   * @param label what it is, within its part
   * @param text as it stands
   */
  public record Figure(String group, String part, String path, String label, String text) {}

  /**
   * The figures that one changes, line by line and machine by machine; none of a half-typed text.
   */
  public static List<Figure> figures(String text) {
    return FormValues.of(text).stream()
        .map(v -> new Figure(v.group(), v.part(), v.path(), v.label(), v.text()))
        .toList();
  }

  /** Whether a person who types this in place of a figure leaves a figure there. */
  public static boolean isFigure(String typed) {
    return FormValues.isFigure(typed);
  }

  /** How many single values a text holds in all. */
  public static int values(String text) {
    return FormValues.count(text);
  }

  /** The titles in a section of a text by name, such as of its options; none where it has none. */
  public static Map<String, String> titles(String text, String section) {
    return FormValues.titles(text, section);
  }
}
