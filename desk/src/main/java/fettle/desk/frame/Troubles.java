package fettle.desk.frame;

import fettle.desk.json.Shapes;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.BookException;
import fettle.workshop.UnknownNameException;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.http.HttpStatus;
import io.javalin.validation.ValidationException;
import java.io.EOFException;
import java.io.UnsupportedEncodingException;
import java.nio.channels.ClosedChannelException;
import java.util.List;
import java.util.concurrent.TimeoutException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns every failure into a plain answer: a page for people, faults as JSON under {@code /api}. */
public final class Troubles {
    private static final Logger LOG = LoggerFactory.getLogger(Troubles.class);
    private static final String ANSWERED = "answered";

    private final Pages pages;

    public Troubles(Pages pages) {
        this.pages = pages;
    }

    public void addTo(RoutesConfig routes) {
        routes.exception(InputException.class, (e, ctx) -> answer(ctx, HttpStatus.BAD_REQUEST, e.faults()));
        routes.exception(UnknownNameException.class, (e, ctx) -> answer(ctx, HttpStatus.NOT_FOUND, "name", e));
        routes.exception(BookException.class, (e, ctx) -> answer(ctx, HttpStatus.CONFLICT, "book", e));
        routes.exception(ValidationException.class, this::unreadable);
        routes.exception(HttpResponseException.class, this::refused);
        routes.exception(Exception.class, this::unexpected);
        routes.error(HttpStatus.NOT_FOUND.getCode(), this::notFound);
    }

    private void refused(HttpResponseException e, Context ctx) {
        HttpStatus status = HttpStatus.forStatus(e.getStatus());
        String sentence = e.getMessage() == null ? status.getMessage() : e.getMessage();
        answer(ctx, status, List.of(new Fault("", sentence)));
    }

    private void unreadable(ValidationException e, Context ctx) {
        List<Fault> faults = e.getErrors().keySet().stream()
                .map(field -> new Fault(field, field + " is not a whole number. Write it with digits only."))
                .toList();
        answer(ctx, HttpStatus.BAD_REQUEST, faults);
    }

    private void unexpected(Exception e, Context ctx) {
        if (isCutOff(e)) {
            answer(
                    ctx,
                    HttpStatus.BAD_REQUEST,
                    List.of(new Fault("", "the request broke off, or its encoding is not known. Send it again.")));
            return;
        }
        LOG.error("{} {} failed", ctx.method(), ctx.path(), e);
        String sentence = "this is a fault of Fettle, not yours; nothing was changed. "
                + "Go back and try again; the log of the program says more.";
        answer(ctx, HttpStatus.INTERNAL_SERVER_ERROR, List.of(new Fault("", sentence)));
    }

    /** Whether whoever asked went away, was too slow in the middle of asking, or writes in an encoding nobody knows. */
    private static boolean isCutOff(Exception e) {
        for (Throwable cause = e; cause != null; cause = cause.getCause()) {
            if (cause instanceof EOFException
                    || cause instanceof ClosedChannelException
                    || cause instanceof TimeoutException
                    || cause instanceof UnsupportedEncodingException) {
                return true;
            }
        }
        return false;
    }

    private void notFound(Context ctx) {
        if (ctx.attribute(ANSWERED) == null) {
            String sentence = "there is no page at " + ctx.path() + ". Start again from Today.";
            answer(ctx, HttpStatus.NOT_FOUND, List.of(new Fault("", sentence)));
        }
    }

    private void answer(Context ctx, HttpStatus status, String field, Exception e) {
        answer(ctx, status, List.of(new Fault(field, String.valueOf(e.getMessage()))));
    }

    private void answer(Context ctx, HttpStatus status, List<Fault> faults) {
        ctx.attribute(ANSWERED, true);
        ctx.status(status);
        if (ctx.path().startsWith("/api/")) {
            ctx.contentType("application/json").result(Shapes.write(new Shapes.Refusal(faults)));
            return;
        }
        String sentences = String.join(" ", faults.stream().map(Fault::sentence).toList());
        pages.show(ctx, "frame/trouble", Place.TODAY, heading(status), new Trouble(heading(status), sentences));
    }

    private static String heading(HttpStatus status) {
        return switch (status) {
            case NOT_FOUND -> "Not found";
            case INTERNAL_SERVER_ERROR -> "Something broke";
            default -> "Not done";
        };
    }
}
