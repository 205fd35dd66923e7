package hurdline.chart.kit;

import java.util.function.Supplier;

/**
 * What is made when it is first asked for, and kept: files and page show the same drawings, drawn
 * once.
 */
public final class Memoized<T> implements Supplier<T> {
  private final Supplier<T> maker;
  private T made;

  public Memoized(Supplier<T> maker) {
    this.maker = maker;
  }

  @Override
  public synchronized T get() {
    if (made == null) {
      made = maker.get();
    }
    return made;
  }
}
