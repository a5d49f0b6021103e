package fettle.reliability;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The pages of a desk that can be reached by its links, and the forms on them.
 *
 * @param addresses of pages, with what follows a question mark
 * @param forms each action once, with all fields met
 */
record Pages(Set<String> addresses, Set<Form> forms) {
    private static final int MOST_PAGES = 50;
    private static final int MOST_ALIKE = 2;
    private static final Pattern LINK = Pattern.compile("<a\\b[^>]*href=\"(/[^\"#]*)");
    private static final Pattern FORM = Pattern.compile("<form\\b([^>]*)>(.*?)</form>", Pattern.DOTALL);
    private static final Pattern FIELD =
            Pattern.compile("<(input|textarea|select)\\b[^>]*?name=\"([^\"]+)\"[^>]*>([^<]*)", Pattern.DOTALL);
    private static final Pattern VALUE = Pattern.compile("value=\"([^\"]*)\"");

    /** @param fields each with what stands in it */
    record Form(String action, boolean post, Map<String, String> fields) {}

    /** @param fetch gives the page at an address */
    static Pages crawl(UnaryOperator<String> fetch) {
        Set<String> seen = new LinkedHashSet<>();
        Map<String, Form> forms = new LinkedHashMap<>();
        Map<String, Integer> alike = new LinkedHashMap<>();
        Deque<String> waiting = new ArrayDeque<>(Set.of("/"));
        while (!waiting.isEmpty() && seen.size() < MOST_PAGES) {
            String address = waiting.removeFirst();
            if (!seen.add(address)) {
                continue;
            }
            String page = fetch.apply(address);
            takeForms(page, address, forms);
            Matcher links = LINK.matcher(page);
            while (links.find()) {
                String next = links.group(1).replace("&amp;", "&");
                String kind = next.replaceAll("=[^&]*", "=").replaceAll("/[^/?]*\\d[^/?]*", "/#");
                if (!seen.contains(next) && alike.merge(kind, 1, Integer::sum) <= MOST_ALIKE) {
                    waiting.add(next);
                }
            }
        }
        return new Pages(seen, new LinkedHashSet<>(forms.values()));
    }

    private static void takeForms(String page, String address, Map<String, Form> forms) {
        Matcher found = FORM.matcher(page);
        while (found.find()) {
            Matcher action = Pattern.compile("action=\"([^\"]*)\"").matcher(found.group(1));
            String to = action.find() ? action.group(1).replace("&amp;", "&") : address;
            boolean post = found.group(1).contains("method=\"post\"");
            Map<String, String> fields = new LinkedHashMap<>();
            Matcher field = FIELD.matcher(found.group(2));
            while (field.find()) {
                Matcher value = VALUE.matcher(field.group());
                fields.put(field.group(2), value.find() ? value.group(1) : field.group(3));
            }
            String path = to.replaceAll("\\?.*", "").replaceAll("/\\d+", "/#");
            forms.merge(post + path + fields.keySet(), new Form(to, post, fields), (one, other) -> one);
        }
    }
}
