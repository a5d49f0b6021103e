package fettle.desk;

import fettle.desk.api.Api;
import fettle.desk.entry.EntryHandler;
import fettle.desk.fit.FitHandler;
import fettle.desk.fit.TimerHandler;
import fettle.desk.frame.Assets;
import fettle.desk.frame.Pages;
import fettle.desk.frame.Troubles;
import fettle.desk.glossary.GlossaryHandler;
import fettle.desk.guard.Guard;
import fettle.desk.journal.JournalHandler;
import fettle.desk.kit.KitHandler;
import fettle.desk.label.LabelsHandler;
import fettle.desk.outing.OutingsHandler;
import fettle.desk.pack.PackHandler;
import fettle.desk.passport.PassportHandler;
import fettle.desk.preference.PreferencesHandler;
import fettle.desk.rules.RulesHandler;
import fettle.desk.setup.SetUpsHandler;
import fettle.desk.shelf.ShelfHandler;
import fettle.desk.start.StartHandler;
import fettle.desk.today.TodayHandler;
import fettle.desk.trace.TraceHandler;
import fettle.desk.worksheet.WorksheetHandler;
import fettle.workshop.Workshop;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.config.RoutesConfig;
import io.javalin.config.SizeUnit;
import io.javalin.util.JavalinBindException;

/** The web desk of one open book. Thread-safe; closing it leaves the workshop open. */
public final class Desk implements AutoCloseable {
    private static final long LARGEST_REQUEST_BYTES = 64 * 1024;
    private static final long LARGEST_UPLOAD_GIB = 2;

    private final Javalin server;
    private final String url;

    private Desk(Javalin server, String url) {
        this.server = server;
        this.url = url;
    }

    /**
     * Serves a workshop until closed.
     *
     * @throws PortTakenException if the port cannot be had
     */
    public static Desk start(Workshop workshop, DeskOptions options) {
        Javalin server = Javalin.create(config -> {
            configure(config, options);
            route(config.routes, workshop, options);
        });
        try {
            server.start();
        } catch (JavalinBindException e) {
            server.stop();
            throw new PortTakenException(options.host(), options.port(), e);
        }
        return new Desk(server, "http://" + urlHost(options.host()) + ":" + server.port() + "/");
    }

    private static void configure(JavalinConfig config, DeskOptions options) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.jetty.host = options.host();
        config.jetty.port = options.port();
        config.jetty.modifyHttpConfiguration(http -> http.setSendServerVersion(false));
        config.jetty.multipartConfig.maxFileSize(LARGEST_UPLOAD_GIB, SizeUnit.GB);
        config.jetty.multipartConfig.maxTotalRequestSize(LARGEST_UPLOAD_GIB, SizeUnit.GB);
        config.http.maxRequestSize = LARGEST_REQUEST_BYTES;
        config.http.generateEtags = true;
    }

    private static void route(RoutesConfig routes, Workshop workshop, DeskOptions options) {
        Pages pages = new Pages(workshop.history(), workshop.keeping(), options.clock(), options.notice());
        new Guard(options.host()).addTo(routes);
        Assets.addTo(routes);
        new Troubles(pages).addTo(routes);
        new TodayHandler(workshop, pages).addTo(routes);
        new EntryHandler(workshop.entries(), pages).addTo(routes);
        new ShelfHandler(workshop, pages).addTo(routes);
        new PreferencesHandler(pages).addTo(routes);
        new GlossaryHandler(pages).addTo(routes);
        new StartHandler(workshop, pages).addTo(routes);
        new KitHandler(workshop, pages).addTo(routes);
        new FitHandler(workshop, pages).addTo(routes);
        new TimerHandler(workshop, pages).addTo(routes);
        new PackHandler(workshop, pages).addTo(routes);
        new LabelsHandler(workshop, pages).addTo(routes);
        new PassportHandler(workshop, pages).addTo(routes);
        new TraceHandler(workshop, pages).addTo(routes);
        new SetUpsHandler(workshop, pages).addTo(routes);
        new OutingsHandler(workshop, pages).addTo(routes);
        new RulesHandler(workshop.rules(), pages).addTo(routes);
        new WorksheetHandler(pages).addTo(routes);
        new JournalHandler(workshop.history(), pages).addTo(routes);
        new Api(workshop).addTo(routes);
    }

    private static String urlHost(String host) {
        return host.contains(":") ? "[" + host + "]" : host;
    }

    /** Where the desk is, with a slash at the end. */
    public String url() {
        return url;
    }

    @Override
    public void close() {
        server.stop();
    }
}
