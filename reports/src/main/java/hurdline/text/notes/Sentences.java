package hurdline.text.notes;

import hurdline.answer.Fact;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;

/** How each kind of fact is told; a test holds that none is left out. */
final class Sentences {
  private final Map<Class<?>, Function<Fact, Note>> byKind = new HashMap<>();

  <F extends Fact> Sentences tell(Class<F> kind, String title, Function<F, String> text) {
    return tell(kind, fact -> new Note(title, text.apply(fact)));
  }

  /** Where the title, too, depends on the fact. */
  <F extends Fact> Sentences tell(Class<F> kind, Function<F, Note> note) {
    byKind.put(kind, fact -> note.apply(kind.cast(fact)));
    return this;
  }

  /** A fact that is told alike whatever it holds. */
  Sentences tell(Class<? extends Fact> kind, String title, String text) {
    byKind.put(kind, fact -> new Note(title, text));
    return this;
  }

  boolean know(Class<? extends Fact> kind) {
    return byKind.containsKey(kind);
  }

  Note of(Fact fact) {
    Function<Fact, Note> known = byKind.get(fact.getClass());
    if (known == null) {
      throw new AssertionError("no sentence for " + fact.getClass());
    }
    return known.apply(fact);
  }
}
