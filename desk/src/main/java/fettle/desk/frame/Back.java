package fettle.desk.frame;

import io.javalin.http.Context;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Addresses to come back to after a change: always on this desk, never elsewhere. */
public final class Back {
    private Back() {}

    /** The address of the page asked for, without the message of an earlier change. */
    public static String of(Context ctx) {
        String query = ctx.queryString();
        return safe(query == null ? ctx.path() : ctx.path() + "?" + query);
    }

    /** An address from a form, or Today if it is missing or leads away from the desk. */
    public static String safe(@Nullable String address) {
        if (address == null || !address.matches("/(?![/\\\\])[\\x21-\\x7e&&[^\\\\]]*")) {
            return "/";
        }
        return withoutMessage(address);
    }

    /** An address with one more parameter. */
    public static String with(String address, String name, String value) {
        return address + (address.contains("?") ? "&" : "?") + name + "=" + encode(value);
    }

    public static String encode(String value) {
        return URLEncoder.encode(value, StandardCharsets.UTF_8);
    }

    private static String withoutMessage(String address) {
        int question = address.indexOf('?');
        if (question < 0) {
            return address;
        }
        String kept = Arrays.stream(address.substring(question + 1).split("&"))
                .filter(part -> !part.startsWith("done="))
                .collect(Collectors.joining("&"));
        return address.substring(0, question) + (kept.isEmpty() ? "" : "?" + kept);
    }
}
