package hurdline.service;

import hurdline.plant.yaml.KeyOffers;
import java.util.List;
import java.util.Optional;

/** What may stand at a place of a plant's text, which may be half written. */
public final class PlantKeys {
  private PlantKeys() {}

  /**
   * Something that may stand there.
   *
   * @param kind {@code due} for a key that must be there, {@code key}, {@code name} or {@code word}
   * @param meaning one sentence; may be empty
   */
  public record Offer(String label, String kind, String meaning) {}

  /**
   * What may be typed at a place.
   *
   * @param offset in characters from the top
   */
  public static List<Offer> offers(String text, int offset) {
    return KeyOffers.at(text, offset).stream()
        .map(offer -> new Offer(offer.label(), offer.kind(), offer.meaning()))
        .toList();
  }

  /** The meaning of the key that a place lies in; empty where it lies in none. */
  public static Optional<String> meaning(String text, int offset) {
    return KeyOffers.meaning(text, offset);
  }
}
