package hurdline.web.http;

/** Why a request is not answered: a status of HTTP and one sentence. */
public final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;
  private final int status;

  public Refusal(int status, String said) {
    super(said, null, false, false);
    this.status = status;
  }

  public static Refusal notThere() {
    return new Refusal(404, "There is nothing here.");
  }

  public int status() {
    return status;
  }
}
