package fettle.cli;

import fettle.desk.PortTakenException;
import fettle.engine.pack.simulation.CancelledException;
import fettle.engine.units.Fault;
import fettle.engine.units.InputException;
import fettle.workshop.BookException;
import fettle.workshop.UnknownNameException;
import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The one place where an exception becomes a message and an exit code. */
final class Problems implements IExecutionExceptionHandler, IParameterExceptionHandler {
    @Override
    public int handleExecutionException(Exception problem, CommandLine command, ParseResult parsed) {
        PrintWriter err = command.getErr();
        if (problem instanceof InputException input) {
            input.faults().stream().map(Fault::sentence).forEach(sentence -> tell(err, sentence));
            return ExitCode.CANNOT;
        }
        if (problem instanceof BookException
                || problem instanceof UnknownNameException
                || problem instanceof PortTakenException
                || problem instanceof CancelledException
                || problem instanceof RefusedException) {
            tell(err, String.valueOf(problem.getMessage()));
            return ExitCode.CANNOT;
        }
        tell(err, "a fault of Fettle itself: " + problem + ". Nothing you entered before is lost.");
        tell(err, "please report it with: " + firstOwnFrame(problem));
        return ExitCode.FAULT;
    }

    @Override
    public int handleParseException(ParameterException problem, String[] arguments) {
        CommandLine command = problem.getCommandLine();
        PrintWriter err = command.getErr();
        tell(err, String.valueOf(problem.getMessage()));
        UnmatchedArgumentException.printSuggestions(problem, err);
        String words = command.getCommandSpec().qualifiedName();
        tell(err, "see " + words + " --help");
        return ExitCode.USAGE;
    }

    private static void tell(PrintWriter err, String sentence) {
        err.println("fettle: " + sentence);
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
