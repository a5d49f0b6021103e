package fettle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The scripts {@code fettle} and {@code check} in a path with spaces, with stand-ins for Java and Maven. */
final class LauncherTest {
    private static final Path PROJECT = Path.of("").toAbsolutePath().getParent();

    /** What a stand-in for Maven does: it says a module is built and writes the jar. */
    private static final String BUILDS = "echo \"[INFO] Building Fettle engine 0.1.0 [1/1]\"; mkdir -p cli/target;"
            + " echo jar > cli/target/fettle.jar; echo run >> mvn.runs";

    @TempDir
    private Path temporary;

    private Path home;
    private Path tools;

    @BeforeEach
    void copyTheScripts() throws IOException {
        home = Files.createDirectories(temporary.resolve("a path").resolve("fettle x"));
        tools = Files.createDirectory(temporary.resolve("tools"));
        Files.createDirectories(home.resolve("scripts"));
        for (String script : List.of("fettle", "check", "scripts/toolchain.sh")) {
            Files.copy(PROJECT.resolve(script), home.resolve(script), StandardCopyOption.COPY_ATTRIBUTES);
        }
        Path sources =
                Files.createDirectories(home.resolve("cli").resolve("src").resolve("main"));
        Files.writeString(sources.resolve("Main.java"), "class Main {}");
        Files.writeString(home.resolve("pom.xml"), "<project/>");
        Files.writeString(home.resolve("cli").resolve("pom.xml"), "<project/>");
    }

    @Test
    void withoutJavaTheySayWhatToInstall() throws IOException, InterruptedException {
        for (String script : List.of("fettle", "check")) {
            var result = run(Map.of("PATH", tools.toString()), script);

            assertThat(result.code()).as(script).isEqualTo(1);
            assertThat(result.err().lines())
                    .as(script)
                    .singleElement()
                    .asString()
                    .contains("no Java found", "JDK 17");
        }
    }

    @Test
    void withAnOldJavaTheySayWhichOneWasFound() throws IOException, InterruptedException {
        tool("java", "echo 'openjdk version \"11.0.2\"' >&2");

        var result = run(withTools(), "fettle", "today");

        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err().lines()).singleElement().asString().contains("Java 11", "17 or later");
    }

    @Test
    void withoutTheCompilerOrMavenTheySayWhatToInstall() throws IOException, InterruptedException {
        java();
        assertThat(run(onlyTools(), "fettle").err().lines())
                .singleElement()
                .asString()
                .contains("javac");

        tool("javac", ":");
        for (String script : List.of("fettle", "check")) {
            var result = run(onlyTools(), script);

            assertThat(result.code()).as(script).isEqualTo(1);
            assertThat(result.err().lines())
                    .as(script)
                    .singleElement()
                    .asString()
                    .contains("Maven (mvn) not found");
        }
    }

    @Test
    void buildsOnFirstUseAndTellsItsProgress() throws IOException, InterruptedException {
        java();
        tool("javac", ":");
        tool("mvn", BUILDS);

        var first = run(withTools(), "fettle", "pack", "show", "P 07");

        assertThat(first.code()).as(first.err()).isZero();
        assertThat(first.err()).contains("first use: building", "Fettle engine (1/1)", "built.");
        assertThat(first.out()).contains("-jar " + home.resolve("cli/target/fettle.jar"), "pack show P 07");
    }

    @Test
    void buildsAgainOnlyAfterAChange() throws IOException, InterruptedException {
        java();
        tool("javac", ":");
        tool("mvn", BUILDS);
        run(withTools(), "fettle");

        assertThat(run(withTools(), "fettle").err()).isEmpty();
        assertThat(home.resolve("mvn.runs")).hasContent("run");

        Files.setLastModifiedTime(
                home.resolve("cli/src/main/Main.java"),
                FileTime.from(Instant.now().plusSeconds(60)));
        assertThat(run(withTools(), "fettle").err()).contains("the sources are newer than the jar");
    }

    @Test
    void tellsWhyABuildFailed() throws IOException, InterruptedException {
        java();
        tool("javac", ":");
        tool("mvn", "echo '[ERROR] no room'; exit 1");

        var result = run(withTools(), "fettle", "today");

        assertThat(result.code()).isEqualTo(1);
        assertThat(result.err())
                .contains(
                        "no room",
                        "the build failed",
                        home.resolve("target/build.log").toString());
    }

    @Test
    void startsThroughALink() throws IOException, InterruptedException {
        java();
        tool("javac", ":");
        tool("mvn", BUILDS);
        Path link = Files.createSymbolicLink(temporary.resolve("link"), home.resolve("fettle"));

        assertThat(end(withTools(), List.of("bash", link.toString())).out())
                .contains(home.resolve("cli/target/fettle.jar").toString());
    }

    private void java() throws IOException {
        tool("java", "[ \"$1\" = -version ] && echo 'openjdk version \"17.0.1\"' >&2 || echo \"$@\"");
    }

    private void tool(String name, String script) throws IOException {
        Path file = Files.writeString(tools.resolve(name), "#!/bin/sh\n" + script + "\n");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-xr-x"));
    }

    private Map<String, String> withTools() {
        return Map.of("PATH", tools + ":" + System.getenv("PATH"));
    }

    /** The stand-ins and what the scripts themselves need, and no Java or Maven of this machine. */
    private Map<String, String> onlyTools() throws IOException {
        for (String needed : List.of("find", "grep", "readlink", "sed", "tee", "mkdir", "touch", "cat")) {
            tool(needed, "exec " + onPath(needed) + " \"$@\"");
        }
        return Map.of("PATH", tools.toString());
    }

    private static Path onPath(String command) {
        return List.of(System.getenv("PATH").split(":")).stream()
                .map(folder -> Path.of(folder, command))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow();
    }

    private Shell.Result run(Map<String, String> environment, String script, String... arguments)
            throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(
                List.of(onPath("bash").toString(), home.resolve(script).toString()));
        command.addAll(List.of(arguments));
        return end(environment, command);
    }

    private static Shell.Result end(Map<String, String> environment, List<String> command)
            throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().clear();
        builder.environment().putAll(environment);
        return Launched.end(builder.start());
    }
}
