package hurdline.answer;

/**
 * What one other value of one choice does to the plan that is named.
 *
 * @param choice its place
 * @param value place of the other value
 * @param plan number of the plan that it makes
 * @param difference mean of that plan less the one that is named, on the same random draws
 * @param cost what it costs to buy less what the named one does
 */
public record ChoiceEffect(
    int choice, int value, int plan, double difference, double low95, double high95, double cost) {}
