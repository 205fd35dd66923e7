package hurdline.plant.yaml;

import hurdline.plant.yaml.tree.MessageText;
import hurdline.plant.yaml.tree.SourcePosition;
import hurdline.plant.yaml.tree.Tree;
import hurdline.plant.yaml.tree.Tree.Scalar;
import hurdline.plant.yaml.tree.UnreadableException;
import hurdline.unit.Amount;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/**
 * A value such as {@code +30d} or {@code -1w}: the date that the file says, moved by whole days or
 * weeks.
 */
final class DateMove implements RelativeValue {
  private static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");

  private final String path;
  private final int days;
  private final SourcePosition place;

  private DateMove(String path, int days, SourcePosition place) {
    this.path = path;
    this.days = days;
    this.place = place;
  }

  /**
   * The move that a value asks for; empty where the value is another.
   *
   * @param place where the value stands
   */
  static Optional<RelativeValue> of(String path, String value, SourcePosition place) {
    OptionalInt days = Amount.daysMoved(value);
    return days.isPresent()
        ? Optional.of(new DateMove(path, days.getAsInt(), place))
        : Optional.empty();
  }

  @Override
  public Tree changed(Tree at, String here) {
    if (at instanceof Scalar scalar && DATE.matcher(scalar.text()).matches()) {
      try {
        return new Scalar(LocalDate.parse(scalar.text()).plusDays(days).toString(), true, place);
      } catch (DateTimeException noSuchDay) {
        throw noDate(at, here);
      }
    }
    throw noDate(at, here);
  }

  private UnreadableException noDate(Tree at, String here) {
    return ValueChange.refuse(
        path,
        MessageText.quoted(here)
            + (at instanceof Scalar ? " says " : " is ")
            + MessageText.of(at)
            + ", which is no date to move",
        "a path to a date; a time is set without a sign, and x and a factor scales an amount");
  }

  @Override
  public String path() {
    return path;
  }

  @Override
  public String verb() {
    return "move";
  }
}
