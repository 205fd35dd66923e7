package hurdline.plant;

/** Hands that one shift of one line pays. */
public record Crew(String line, String shift, int hands) {
  public Crew {
    Check.count(0, "hands", hands);
  }
}
