package hurdline.service;

import hurdline.plant.yaml.PlantEdit;

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
}
