package fettle.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Set;
import java.util.random.RandomGenerator;

/** Who may touch files, sockets, clocks, databases and the standard streams. */
@AnalyzeClasses(packages = "fettle", importOptions = ImportOption.DoNotIncludeTests.class)
final class OutsideWorldTest {
    /** Classes of java.time whose {@code now()} reads a clock. */
    private static final Set<String> TIMES = Set.of(
            "java.time.Instant",
            "java.time.LocalDate",
            "java.time.LocalDateTime",
            "java.time.LocalTime",
            "java.time.OffsetDateTime",
            "java.time.ZonedDateTime",
            "java.time.Year",
            "java.time.YearMonth");

    private static final DescribedPredicate<JavaCall<?>> READS_CLOCK = describe(
            "reads the process clock",
            call -> TIMES.contains(call.getTargetOwner().getFullName())
                    && call.getName().equals("now")
                    && call.getTarget().getRawParameterTypes().isEmpty());

    private static final DescribedPredicate<JavaCall<?>> READS_LOCALE_OR_ZONE = describe(
            "reads the process locale or zone",
            call -> call.getTargetOwner().isEquivalentTo(Locale.class)
                            && call.getName().equals("getDefault")
                    || call.getTargetOwner().isEquivalentTo(ZoneId.class)
                            && call.getName().equals("systemDefault"));

    @ArchTest
    static final ArchRule ENGINE_HAS_NO_OUTSIDE = noClasses()
            .that()
            .resideInAPackage("fettle.engine..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "java.io..", "java.nio.file..", "java.net..", "java.sql..", "org.slf4j..", "java.util.logging..")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class)
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(RandomGenerator.class)
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Math.class, "random")
            .orShould()
            .callMethodWhere(READS_CLOCK)
            .orShould()
            .callMethodWhere(READS_LOCALE_OR_ZONE)
            .because("the same record, rules and instant must give the same answer on every machine, for ever");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_READS_THE_PROCESS_CLOCK = noClasses()
            .that()
            .resideOutsideOfPackage("fettle.cli..")
            .should()
            .callMethodWhere(READS_CLOCK)
            .orShould()
            .callMethod(System.class, "currentTimeMillis")
            .because("time comes in through the Clock that the command line hands down, so tests can set it");

    @ArchTest
    static final ArchRule ONLY_THE_STORE_SEES_THE_DATABASE = noClasses()
            .that()
            .resideOutsideOfPackages("fettle.book.store..", "fettle.book.archive..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.sql..", "javax.sql..", "org.jdbi..", "org.sqlite..", "org.flywaydb..")
            .because("SQL in one place can be checked, migrated and moved to a server database in one place");

    @ArchTest
    static final ArchRule ONLY_THE_DESK_SEES_THE_WEB_SERVER = noClasses()
            .that()
            .resideOutsideOfPackage("fettle.desk..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "gg.jte..")
            .because("how pages are served is the desk's own affair");

    @ArchTest
    static final ArchRule ONLY_THE_COMMAND_LINE_SEES_STANDARD_STREAMS = noClasses()
            .that()
            .resideOutsideOfPackage("fettle.cli..")
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .accessField(System.class, "in")
            .orShould()
            .callMethod(Throwable.class, "printStackTrace")
            .orShould()
            .callMethod(System.class, "exit", int.class)
            .because("standard output carries the data a person asked for and nothing else");
}
