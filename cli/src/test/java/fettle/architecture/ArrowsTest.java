package fettle.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Dependencies point one way: between modules, inside the engine, and without circles anywhere. */
@AnalyzeClasses(packages = "fettle", importOptions = ImportOption.DoNotIncludeTests.class)
final class ArrowsTest {
    @ArchTest
    static final ArchRule MODULES_POINT_ONE_WAY = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("engine")
            .definedBy("fettle.engine..")
            .layer("planner")
            .definedBy("fettle.planner..")
            .layer("book")
            .definedBy("fettle.book..")
            .layer("workshop")
            .definedBy("fettle.workshop..")
            .layer("desk")
            .definedBy("fettle.desk..")
            .layer("cli")
            .definedBy("fettle.cli..")
            .whereLayer("engine")
            .mayNotAccessAnyLayer()
            .whereLayer("planner")
            .mayOnlyAccessLayers("engine")
            .whereLayer("book")
            .mayOnlyAccessLayers("engine")
            .whereLayer("workshop")
            .mayOnlyAccessLayers("engine", "planner", "book")
            .whereLayer("desk")
            .mayOnlyAccessLayers("engine", "workshop")
            .whereLayer("cli")
            .mayOnlyAccessLayers("engine", "workshop", "desk")
            .because("the engine must be usable alone, and desk and command line must not bypass the use cases");

    @ArchTest
    static final ArchRule ENGINE_PACKAGES_POINT_ONE_WAY = layeredArchitecture()
            .consideringOnlyDependenciesInLayers()
            .layer("units")
            .definedBy("fettle.engine.units..")
            .layer("working")
            .definedBy("fettle.engine.working..")
            .layer("cell")
            .definedBy("fettle.engine.cell..")
            .layer("rule")
            .definedBy("fettle.engine.rule..")
            .layer("pack")
            .definedBy("fettle.engine.pack..")
            .layer("supply")
            .definedBy("fettle.engine.supply..")
            .layer("charge")
            .definedBy("fettle.engine.charge..")
            .layer("control")
            .definedBy("fettle.engine.control..")
            .layer("trace")
            .definedBy("fettle.engine.trace..")
            .layer("health")
            .definedBy("fettle.engine.health..")
            .layer("travel")
            .definedBy("fettle.engine.travel..")
            .whereLayer("travel")
            .mayOnlyAccessLayers("units", "working", "cell", "pack")
            .whereLayer("trace")
            .mayOnlyAccessLayers("units", "working", "cell", "rule", "pack")
            .whereLayer("health")
            .mayOnlyAccessLayers("units", "working", "cell", "rule", "pack", "trace")
            .whereLayer("control")
            .mayOnlyAccessLayers("units", "working", "supply", "pack")
            .whereLayer("units")
            .mayNotAccessAnyLayer()
            .whereLayer("working")
            .mayOnlyAccessLayers("units")
            .whereLayer("cell")
            .mayOnlyAccessLayers("units", "working")
            .whereLayer("rule")
            .mayOnlyAccessLayers("units", "working", "cell")
            .whereLayer("pack")
            .mayOnlyAccessLayers("units", "working", "cell", "rule")
            .whereLayer("supply")
            .mayOnlyAccessLayers("units", "working", "cell", "pack")
            .whereLayer("charge")
            .mayOnlyAccessLayers("units", "working", "cell", "rule", "pack", "supply")
            .because("a quantity knows no cell, a cell no pack, a pack no charger: each can be read and tested alone");

    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("fettle.(**)")
            .should()
            .beFreeOfCycles()
            .because("packages in a circle can only be understood, tested and changed together");

    @ArchTest
    static final ArchRule ENGINE_LEANS_ON_NOTHING_BUT_JDK_AND_NUMERICS = noClasses()
            .that()
            .resideInAPackage("fettle.engine..")
            .should()
            .dependOnClassesThat()
            .resideOutsideOfPackages(
                    "fettle.engine..",
                    "java.lang..",
                    "java.util..",
                    "java.time..",
                    "java.math..",
                    "java.text..",
                    "org.hipparchus..",
                    "org.jspecify.annotations..")
            .because("a framework or an outside resource in a calculation makes its answer depend on the machine");

    @ArchTest
    static void everyModuleIsLookedAt(JavaClasses classes) {
        for (String module : new String[] {"engine", "planner", "book", "workshop", "desk", "cli"}) {
            assertThat(classes.stream().filter(type -> type.getPackageName().startsWith("fettle." + module)))
                    .as("classes of module %s", module)
                    .isNotEmpty();
        }
    }
}
