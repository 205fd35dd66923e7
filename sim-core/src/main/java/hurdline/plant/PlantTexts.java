package hurdline.plant;

import java.util.Map;

/**
 * The texts that a plant is read from: with them another machine reads the same plant.
 *
 * @param name of the plant file, without any folder
 * @param text of the plant file
 * @param rain the text of each rain file by the name that the plant calls it
 */
public record PlantTexts(String name, String text, Map<String, String> rain) {
  public PlantTexts {
    rain = Map.copyOf(rain);
  }
}
