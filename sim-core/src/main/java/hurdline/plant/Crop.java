package hurdline.plant;

/** A crop, counted in bales or, where {@code modules} is set, in modules. */
public record Crop(String name, boolean modules, Bale bale) {}
