package hurdline.plant;

import java.util.OptionalDouble;

/**
 * A class of dry matter that the line tells apart, with its loose density where bins hold volumes.
 */
public record Component(String name, OptionalDouble looseKgPerM3) {
  public Component {
    looseKgPerM3.ifPresent(value -> Check.above0("looseKgPerM3", value));
  }
}
