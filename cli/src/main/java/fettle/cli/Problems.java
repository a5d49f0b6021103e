package fettle.cli;

import fettle.desk.PortTakenException;
import fettle.desk.json.Shapes;
import fettle.engine.pack.simulation.CancelledException;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.BookException;
import fettle.workshop.UnknownNameException;
import java.io.PrintWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * The one place where an exception becomes a message and an exit code: a line per fault on standard error, or, where
 * JSON is asked for, one line in the shape the HTTP API refuses with.
 */
final class Problems implements IExecutionExceptionHandler, IParameterExceptionHandler {
    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) {
        if (problem instanceof ParameterException misuse) {
            return handleParseException(misuse, parsed.originalArgs().toArray(String[]::new));
        }
        tell(command.getErr(), faults(problem), parsed.originalArgs());
        return isRefusal(problem) ? ExitCode.CANNOT : ExitCode.FAULT;
    }

    @Override
    public int handleParseException(ParameterException problem, String[] arguments) {
        tell(problem.getCommandLine().getErr(), List.of(new Fault("", Misuse.sentence(problem))), List.of(arguments));
        return ExitCode.USAGE;
    }

    private static boolean isRefusal(Exception problem) {
        return problem instanceof InputException
                || problem instanceof BookException
                || problem instanceof UnknownNameException
                || problem instanceof PortTakenException
                || problem instanceof CancelledException
                || problem instanceof RefusedException;
    }

    private static List<Fault> faults(Exception problem) {
        if (problem instanceof InputException input) {
            return input.faults();
        }
        String sentence = isRefusal(problem)
                ? String.valueOf(problem.getMessage())
                : "a fault of Fettle itself: " + problem + " at " + firstOwnFrame(problem)
                        + ". Nothing you entered before is lost; please report this line.";
        return List.of(new Fault(field(problem), sentence));
    }

    /** The field the HTTP API names for the same refusal. */
    private static String field(Exception problem) {
        if (problem instanceof UnknownNameException) {
            return "name";
        }
        return problem instanceof BookException ? "book" : "";
    }

    private static void tell(PrintWriter err, List<Fault> faults, List<String> arguments) {
        if (arguments.contains(Printing.JSON)) {
            err.println(Shapes.write(new Shapes.Refusal(faults)));
        } else {
            faults.forEach(fault -> err.println("fettle: " + fault.sentence()));
        }
        err.flush();
    }

    private static String firstOwnFrame(Throwable problem) {
        for (StackTraceElement frame : problem.getStackTrace()) {
            if (frame.getClassName().startsWith("fettle.")) {
                return frame.toString();
            }
        }
        return problem.getClass().getName();
    }
}
