package fettle.desk.frame;

import io.javalin.config.RoutesConfig;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Objects;

/** The few fixed files of every page, read once from the class path. */
public final class Assets {
    private static final String OURS = "/fettle/desk/assets/";
    private static final String HTMX = "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js";
    private static final String UPLOT = "/META-INF/resources/webjars/uplot/1.6.30/dist/";
    private static final String SCRIPT = "text/javascript; charset=utf-8";

    private static final String STYLE = "text/css; charset=utf-8";

    private Assets() {}

    public static void addTo(RoutesConfig routes) {
        serve(routes, "desk.css", OURS + "desk.css", STYLE);
        serve(routes, "desk.js", OURS + "desk.js", SCRIPT);
        serve(routes, "icon.svg", OURS + "icon.svg", "image/svg+xml");
        serve(routes, "htmx.js", HTMX, SCRIPT);
        serve(routes, "trace.js", OURS + "trace.js", SCRIPT);
        serve(routes, "shelf.js", OURS + "shelf.js", SCRIPT);
        serve(routes, "linkage.js", OURS + "linkage.js", SCRIPT);
        serve(routes, "uplot.js", UPLOT + "uPlot.iife.min.js", SCRIPT);
        serve(routes, "uplot.css", UPLOT + "uPlot.min.css", STYLE);
    }

    private static void serve(RoutesConfig routes, String name, String resource, String type) {
        byte[] bytes = read(resource);
        // No-cache lets the browser keep the file but ask each time, so that a new version of Fettle shows at once.
        routes.get(
                "/assets/" + name,
                ctx -> ctx.header("Cache-Control", "no-cache").contentType(type).result(bytes));
    }

    private static byte[] read(String resource) {
        try (InputStream stream = Assets.class.getResourceAsStream(resource)) {
            return Objects.requireNonNull(stream, resource).readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
