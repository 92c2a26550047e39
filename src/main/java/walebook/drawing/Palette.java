package walebook.drawing;

import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;

/**
 * A colour for each role, as {@code #RRGGBB}.
 *
 * @param name the palette's name in the style sheets
 * @param colours one for every role
 */
public record Palette(String name, Map<Role, String> colours) {
  /** Warm paper and dark ink. */
  public static final Palette LIGHT =
      of(
          "light",
          "#FBF8F3 #FFFFFF #1F2430 #5A6070 #DCD5C9 #F3ECDF #2F4B8F #DFE6F6 #1F6B4A #8A5A00"
              + " #A3282D #2F4B8F #A65A1F #2F7F86 #8B3A7E #5A6070");

  /** The same in the evening. */
  public static final Palette DARK =
      of(
          "dark",
          "#1B1D22 #24272E #ECE8E1 #A9ADB8 #3A3E48 #4A4236 #9DB4F2 #2E3854 #7CCBA2 #E5B455"
              + " #F08C8C #9DB4F2 #E8A06A #6FC7CC #DDA0D4 #A9ADB8");

  /** Black on white, for a printer without colour. */
  public static final Palette PRINT =
      of(
          "print",
          "#FFFFFF #FFFFFF #000000 #444444 #BBBBBB #F2F2F2 #000000 #DDDDDD #000000 #000000"
              + " #000000 #000000 #444444 #000000 #444444 #000000");

  public Palette {
    colours = Map.copyOf(colours);
    for (Role role : Role.values()) {
      String colour = colours.get(role);
      if (colour == null || !colour.matches("#[0-9A-Fa-f]{6}")) {
        throw new IllegalArgumentException("colours must hold #RRGGBB for " + role);
      }
    }
  }

  /** The colour of a role as {@code #RRGGBB}. */
  public String colour(Role role) {
    return colours.getOrDefault(role, "#000000");
  }

  private static Palette of(String name, String inOrder) {
    Map<Role, String> colours = new EnumMap<>(Role.class);
    Iterator<String> next = List.of(inOrder.split(" ")).iterator();
    for (Role role : Role.values()) {
      colours.put(role, next.next());
    }
    return new Palette(name, colours);
  }
}
