package hurdline.plant;

/** Another way to plan the season; what it changes is a patch on the plant file. */
public record Plan(String name, String says) {}
