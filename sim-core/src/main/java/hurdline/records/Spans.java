package hurdline.records;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/**
 * Stretches of time that do not overlap, in order, with how much of them lies before any instant;
 * in seconds.
 */
public final class Spans {
  /**
   * @param fromS seconds since 1970
   * @param toS after {@code fromS}
   */
  public record Span(double fromS, double toS) {}

  private final List<Span> spans;
  private final double[] beforeS;

  private Spans(List<Span> spans) {
    this.spans = List.copyOf(spans);
    beforeS = new double[spans.size() + 1];
    for (int i = 0; i < spans.size(); i++) {
      beforeS[i + 1] = beforeS[i] + spans.get(i).toS() - spans.get(i).fromS();
    }
  }

  /** The union of these. */
  public static Spans of(Collection<Span> any) {
    List<Span> union = new ArrayList<>();
    for (Span span : any.stream().sorted(Comparator.comparingDouble(Span::fromS)).toList()) {
      Span last = union.isEmpty() ? null : union.get(union.size() - 1);
      if (last != null && span.fromS() <= last.toS()) {
        union.set(union.size() - 1, new Span(last.fromS(), Math.max(last.toS(), span.toS())));
      } else if (span.toS() > span.fromS()) {
        union.add(span);
      }
    }
    return new Spans(union);
  }

  public List<Span> all() {
    return spans;
  }

  public boolean isEmpty() {
    return spans.isEmpty();
  }

  public double totalS() {
    return beforeS[spans.size()];
  }

  /** How much of them lies before an instant. */
  public double untilS(double instantS) {
    int after = after(instantS);
    return after == 0 ? 0 : beforeS[after] - Math.max(0, spans.get(after - 1).toS() - instantS);
  }

  public double betweenS(double fromS, double toS) {
    return untilS(toS) - untilS(fromS);
  }

  /** Whether an instant lies in one of them, the end left out. */
  public boolean holds(double instantS) {
    int after = after(instantS);
    return after > 0 && instantS < spans.get(after - 1).toS();
  }

  /** The instant at which so much of them has gone by; the last end where there is not so much. */
  public double whenS(double goneS) {
    int at = 0;
    while (at < spans.size() && beforeS[at + 1] < goneS) {
      at++;
    }
    return at == spans.size()
        ? (at == 0 ? 0 : spans.get(at - 1).toS())
        : spans.get(at).fromS() + goneS - beforeS[at];
  }

  /** These without what lies in the others. */
  public Spans less(Spans others) {
    List<Span> left = new ArrayList<>();
    int first = 0;
    for (Span span : spans) {
      while (first < others.spans.size() && others.spans.get(first).toS() <= span.fromS()) {
        first++;
      }
      double at = span.fromS();
      for (int i = first;
          i < others.spans.size() && others.spans.get(i).fromS() < span.toS();
          i++) {
        Span cut = others.spans.get(i);
        if (cut.fromS() > at) {
          left.add(new Span(at, cut.fromS()));
        }
        at = Math.max(at, cut.toS());
      }
      if (at < span.toS()) {
        left.add(new Span(at, span.toS()));
      }
    }
    return new Spans(left);
  }

  /** How many begin at or before an instant. */
  private int after(double instantS) {
    int low = 0;
    int high = spans.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (spans.get(middle).fromS() <= instantS) {
        low = middle + 1;
      } else {
        high = middle;
      }
    }
    return low;
  }
}
