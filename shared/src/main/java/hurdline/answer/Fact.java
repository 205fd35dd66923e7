package hurdline.answer;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Something that an answer takes for granted, warns of or asks: a statement without its sentence,
 * so that each reader gets it in his own units and marks.
 *
 * <p>Amounts are in kg, m, m3, s and shares unless a component's name says otherwise, or have their
 * unit beside them; things go by their names in the plant file. The records are grouped by study.
 */
public sealed interface Fact
    permits RunFact,
        CompareFact,
        FollowUpFact,
        SeasonFact,
        YardFact,
        GridFact,
        ChooseFact,
        SafetyFact {

  /** Every kind there is. */
  static List<Class<? extends Fact>> kinds() {
    return records(Fact.class)
        .<Class<? extends Fact>>map(type -> type.asSubclass(Fact.class))
        .toList();
  }

  private static Stream<Class<?>> records(Class<?> type) {
    return type.isSealed()
        ? Stream.of(type.getPermittedSubclasses()).flatMap(Fact::records)
        : Stream.of(type);
  }

  /** What a kind is called in {@code record.json}: {@code years_of_life}. */
  static String word(Class<? extends Fact> kind) {
    return kind.getSimpleName().replaceAll("(?<=[a-z])(?=[A-Z])", "_").toLowerCase(Locale.ROOT);
  }
}
