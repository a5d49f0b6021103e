package fettle.desk.guard;

import io.javalin.config.RoutesConfig;
import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HttpResponseException;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;

/**
 * Refuses requests that did not come from the desk's own pages or from a program on this machine.
 *
 * <p>The host name is compared so that a foreign name resolving to the loopback (DNS rebinding) is refused; changes are
 * taken only with the desk's own origin, or with none at all, as programs that are not browsers send them.
 */
public final class Guard {
    private static final Set<String> LOOPBACK_NAMES = Set.of("localhost", "127.0.0.1", "[::1]");
    private static final Set<String> READING = Set.of("GET", "HEAD");
    private static final Set<String> OWN_FETCHES = Set.of("same-origin", "none");
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "connect-src 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

    private final String listeningHost;
    private final boolean onLoopback;

    public Guard(String listeningHost) {
        this.listeningHost = listeningHost;
        this.onLoopback = LOOPBACK_NAMES.contains(listeningHost) || listeningHost.equals("::1");
    }

    public void addTo(RoutesConfig routes) {
        routes.before(this::guard);
    }

    private void guard(Context ctx) {
        ctx.header("Content-Security-Policy", POLICY);
        ctx.header("X-Content-Type-Options", "nosniff");
        ctx.header("X-Frame-Options", "DENY");
        ctx.header("Referrer-Policy", "same-origin");
        ctx.header("Cross-Origin-Opener-Policy", "same-origin");
        ctx.header("Cross-Origin-Resource-Policy", "same-origin");
        String host = ctx.header("Host");
        if (!isOwnHost(host)) {
            throw new ForbiddenResponse("the desk does not answer to that name. Open it by the address it printed.");
        }
        if (!READING.contains(ctx.method().name()) && !isOwnRequest(host, ctx)) {
            throw new ForbiddenResponse("this change came from another site. Make it on the desk's own page.");
        }
        requireReadable(ctx);
    }

    /** Reads the kind of what is sent, and a form whole: what is broken there is the fault of who sent it, not of the desk. */
    private static void requireReadable(Context ctx) {
        // both throw what they do not declare
        Callable<?> reading = () -> isForm(String.valueOf(ctx.contentType())) ? ctx.formParamMap() : Map.of();
        try {
            reading.call();
        } catch (HttpResponseException refused) {
            throw refused;
        } catch (Exception broken) {
            throw new BadRequestResponse(
                    "the request broke off, or its encoding or its parts are broken. Send it again.");
        }
    }

    private static boolean isForm(String contentType) {
        return contentType.matches("(?i)(application/x-www-form-urlencoded|multipart/form-data).*");
    }

    private boolean isOwnHost(@Nullable String host) {
        if (host == null) {
            return false;
        }
        String name = host.replaceFirst(":\\d+$", "");
        return LOOPBACK_NAMES.contains(name) || name.equals(listeningHost) || (!onLoopback && isAddress(name));
    }

    // An address cannot be rebound to another machine; only names can.
    private static boolean isAddress(String host) {
        return host.matches("\\d{1,3}(\\.\\d{1,3}){3}") || host.matches("\\[[0-9a-fA-F:.]+\\]");
    }

    private static boolean isOwnRequest(@Nullable String host, Context ctx) {
        String fetchSite = ctx.header("Sec-Fetch-Site");
        if (fetchSite != null && !OWN_FETCHES.contains(fetchSite)) {
            return false;
        }
        String origin = ctx.header("Origin");
        return origin == null || origin.equals("http://" + host);
    }
}
