package hurdline.chance;

/** Placeholder until the real one lands: keep the other version on conflict. */
public interface Distribution {
  double at(double u);

  double mean();
}
