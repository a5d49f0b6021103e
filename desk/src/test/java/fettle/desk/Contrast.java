package fettle.desk;

import java.util.Map;
import org.openqa.selenium.chrome.ChromeDriver;

/**
 * Contrast of every visible text of a page against what lies behind it: relative luminance and ratio as defined by the Web
 * Content Accessibility Guidelines 2.2.
 *
 * @param weakest the smallest ratio
 * @param where the text with it
 * @param compared how many texts were looked at
 */
record Contrast(double weakest, String where, int compared) {
    private static final String MEASURE = """
            const channel = (value) => { const c = value / 255; return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4; };
            const parse = (text) => { const n = (text.match(/[\\d.]+/g) ?? [127, 127, 127]).map(Number); return { rgb: n.slice(0, 3), a: n[3] ?? 1 }; };
            const light = (rgb) => 0.2126 * channel(rgb[0]) + 0.7152 * channel(rgb[1]) + 0.0722 * channel(rgb[2]);
            const behind = (element) => {
              for (let at = element; at; at = at.parentElement) {
                const found = parse(getComputedStyle(at).backgroundColor);
                if (found.a === 1) { return found.rgb; }
              }
              return [255, 255, 255];
            };
            let weakest = 99, where = "", compared = 0;
            const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
            while (walker.nextNode()) {
              const element = walker.currentNode.parentElement;
              if (!walker.currentNode.data.trim() || !element.getClientRects().length || element.closest("script") ||
                (element.closest("svg") && !element.closest("text"))) { continue; }
              const style = getComputedStyle(element);
              const colour = parse(element.closest("svg") ? style.fill : style.color);
              const [a, b] = [light(colour.rgb), light(behind(element))];
              const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
              compared++;
              if (ratio < weakest) { weakest = ratio; where = walker.currentNode.data.trim().slice(0, 40) + " in " + element.className; }
            }
            return { weakest, where, compared };
            """;

    static Contrast of(ChromeDriver browser) {
        Map<?, ?> found = (Map<?, ?>) browser.executeScript(MEASURE);
        return new Contrast(
                ((Number) found.get("weakest")).doubleValue(),
                String.valueOf(found.get("where")),
                ((Number) found.get("compared")).intValue());
    }
}
