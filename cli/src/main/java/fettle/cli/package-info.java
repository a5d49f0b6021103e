/**
 * The command line and the assembly of the one runnable jar.
 *
 * <p>One class per word. A word parses, calls one use case of the workshop and prints: data on standard output,
 * progress on standard error, both through picocli's own writers. {@link fettle.cli.Problems} alone turns exceptions
 * into messages and exit codes.
 */
@NullMarked
package fettle.cli;

import org.jspecify.annotations.NullMarked;
