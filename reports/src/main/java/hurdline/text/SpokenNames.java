package hurdline.text;

import hurdline.answer.Titles;
import hurdline.answer.WhatIf;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What things are called within a sentence, by their titles. */
final class SpokenNames {
  private final Titles titles;

  SpokenNames(Titles titles) {
    this.titles = titles;
  }

  String crop(String name) {
    return Titles.inText(titles.crop(name));
  }

  String product(String name) {
    return Titles.inText(titles.product(name));
  }

  /** {@code the stalk line}. */
  String line(String name) {
    return titles.lineInText(name);
  }

  /** {@code the bag hand}. */
  String resource(String name) {
    return "the " + Titles.inText(titles.resource(name));
  }

  /** {@code the mill and the saw}. */
  String machines(List<String> names) {
    return CapacityWords.and(names.stream().map(titles::machineInText).toList());
  }

  /**
   * {@code the bigger mill}, {@code the bigger mill and the second bag hand}, {@code the plant as
   * it stands}, {@code wage x1.2}.
   */
  String option(String name) {
    return name.equals("base") || WhatIf.isOne(name)
        ? titles.option(name)
        : CapacityWords.and(
            Stream.of(name.split("\\+"))
                .map(each -> "the " + Titles.inText(titles.option(each)))
                .toList());
  }

  /** {@code the plan "Two shifts"}, {@code the season as it stands}. */
  String plan(String name) {
    return name.equals("base") ? titles.plan(name) : "the plan \"" + titles.plan(name) + "\"";
  }

  /** With a large first letter, as a sentence or a row begins. */
  static String upper(String text) {
    int first = text.isEmpty() ? 0 : text.offsetByCodePoints(0, 1);
    return text.substring(0, first).toUpperCase(Locale.ROOT) + text.substring(first);
  }
}
