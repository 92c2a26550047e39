package walebook.desk.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import walebook.drawing.Role;

/**
 * Contrast by the formula of WCAG 2.1 (W3C Recommendation, 2018): success criterion 1.4.3 wants 4.5
 * for text, 1.4.11 wants 3 for the outline of a field.
 */
class ContrastTest {
  private static final Pattern TOKEN = Pattern.compile("-wb-([a-z-]+): (#[0-9A-Fa-f]{6});");

  @ParameterizedTest
  @EnumSource(Theme.class)
  void textReadsOnEveryGround(Theme theme) throws IOException {
    Map<String, String> tokens = tokens(theme);
    for (String text : List.of("ink", "soft", "accent", "met", "too-close", "not-met")) {
      for (String ground : List.of("paper", "card")) {
        assertThat(contrast(tokens, text, ground)).as(text + " on " + ground).isGreaterThan(4.5);
      }
    }
    for (String ground : List.of("nav", "hover", "wash", "cloth", "line")) {
      assertThat(contrast(tokens, "ink", ground)).as("ink on " + ground).isGreaterThan(4.5);
    }
    assertThat(contrast(tokens, "soft", "nav")).isGreaterThan(4.5);
    assertThat(contrast(tokens, "on-accent", "accent")).isGreaterThan(4.5);
    assertThat(contrast(tokens, "field-border", "card")).isGreaterThan(3);
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void picturesHaveTheColoursOfTheWindow(Theme theme) throws IOException {
    Map<String, String> tokens = tokens(theme);
    for (Role role : Role.values()) {
      String token = role.name().toLowerCase(Locale.ROOT).replace('_', '-');
      if (!token.startsWith("series")) {
        assertThat(theme.palette().colour(role)).as(token).isEqualTo(tokens.get(token));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Theme.class)
  void marksOfSeriesStandOutOnTheCard(Theme theme) throws IOException {
    Map<String, String> tokens = tokens(theme);
    for (int series = 0; series < 5; series++) {
      tokens.put("series", theme.palette().colour(Role.series(series)));
      assertThat(contrast(tokens, "series", "card")).isGreaterThan(3);
    }
  }

  private static Map<String, String> tokens(Theme theme) throws IOException {
    Map<String, String> tokens = new HashMap<>();
    try (InputStream in = Look.class.getResourceAsStream(theme.tokens())) {
      assertThat(in).isNotNull();
      Matcher each = TOKEN.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      while (each.find()) {
        tokens.put(each.group(1), each.group(2));
      }
    }
    return tokens;
  }

  private static double contrast(Map<String, String> tokens, String one, String other) {
    double a = luminance(tokens.getOrDefault(one, "none"));
    double b = luminance(tokens.getOrDefault(other, "none"));
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  private static double luminance(String colour) {
    return 0.2126 * channel(colour, 1) + 0.7152 * channel(colour, 3) + 0.0722 * channel(colour, 5);
  }

  private static double channel(String colour, int at) {
    double c = Integer.parseInt(colour.substring(at, at + 2), 16) / 255.0;
    return c <= 0.03928 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }
}
