package org.coldpleat.ui.desktop.view;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.coldpleat.ui.Contrast;
import org.junit.jupiter.api.Test;

/** Every pair of colors in the style sheet of the window stands apart enough, light and dark. */
class StyleContrastTest {
    /** Ground and text of the light look of the toolkit, from its style sheet modena.css of JavaFX 21. */
    private static final Color LIGHT_GROUND = new Color(0xF4F4F4);

    private static final Color LIGHT_TEXT = new Color(0x333333);
    private static final Pattern RULE = Pattern.compile("([^{}]+)\\{([^}]*)}");
    private static final Pattern PAIR = Pattern.compile("(-fx-[a-z-]+):\\s*([^;]+);");

    private static Map<String, Map<String, String>> rules() throws IOException {
        Map<String, Map<String, String>> rules = new LinkedHashMap<>();
        try (InputStream in = StyleContrastTest.class.getResourceAsStream("window.css")) {
            Matcher rule = RULE.matcher(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            while (rule.find()) {
                for (String selector : rule.group(1).split(",", -1)) {
                    Matcher pair = PAIR.matcher(rule.group(2));
                    while (pair.find()) {
                        rules.computeIfAbsent(selector.strip(), key -> new LinkedHashMap<>())
                                .put(pair.group(1), pair.group(2).strip());
                    }
                }
            }
        }
        return rules;
    }

    private static Color ground(Map<String, Map<String, String>> rules, String selector) {
        if (selector.contains(".recovery")) {
            return Color.decode(rules.get(".recovery").get("-fx-background-color"));
        }
        return selector.startsWith(".dark") ? Color.decode(rules.get(".dark").get("-fx-background")) : LIGHT_GROUND;
    }

    @Test
    void textStandsOutFromItsGround() throws IOException {
        Map<String, Map<String, String>> rules = rules();
        int pairs = 0;
        for (Map.Entry<String, Map<String, String>> rule : rules.entrySet()) {
            String fill = rule.getValue().get("-fx-text-fill");
            if (fill != null) {
                double contrast = Contrast.of(Color.decode(fill), ground(rules, rule.getKey()));
                assertTrue(contrast >= Contrast.TEXT, rule.getKey() + ": " + contrast);
                pairs++;
            }
        }
        assertTrue(pairs >= 4, "pairs found: " + pairs);
    }

    @Test
    void framesStandOutFromTheirGround() throws IOException {
        Map<String, Map<String, String>> rules = rules();
        int frames = 0;
        for (Map.Entry<String, Map<String, String>> rule : rules.entrySet()) {
            String border = rule.getValue().get("-fx-border-color");
            if (border != null) {
                double contrast = Contrast.of(Color.decode(border), ground(rules, rule.getKey()));
                assertTrue(contrast >= Contrast.OTHER, rule.getKey() + ": " + contrast);
                boolean dark = rule.getKey().startsWith(".dark") || rules.containsKey(".dark " + rule.getKey());
                assertTrue(dark, rule.getKey() + " has no color for the dark look");
                frames++;
            }
        }
        assertTrue(frames >= 3, "frames found: " + frames);
    }

    @Test
    void whatIsPaleCanStillBeRead() throws IOException {
        Map<String, Map<String, String>> rules = rules();
        int pale = 0;
        for (Map.Entry<String, Map<String, String>> rule : rules.entrySet()) {
            String opacity = rule.getValue().get("-fx-opacity");
            if (opacity != null) {
                Color shown = Contrast.over(LIGHT_TEXT, LIGHT_GROUND, Double.parseDouble(opacity));
                double contrast = Contrast.of(shown, LIGHT_GROUND);
                assertTrue(contrast >= Contrast.TEXT, rule.getKey() + ": " + contrast);
                pale++;
            }
        }
        assertTrue(pale >= 3, "pale parts found: " + pale);
    }
}
