package org.gaugeline;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaPackage;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The map of packages in DEVELOPERS.md, held by machine: what is not allowed here is refused. */
class ArchitectureTest {
  private static final String ROOT = "org.gaugeline";

  private static final JavaClasses MAIN =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages(ROOT);

  /** Which of our packages a package may know, besides itself and {@code quantity}. */
  private static final Map<String, List<String>> ARROWS =
      Map.ofEntries(
          Map.entry("quantity", List.of()),
          Map.entry("mechanics", List.of()),
          Map.entry("reference", List.of()),
          Map.entry("job", List.of("reference")),
          Map.entry("assembly", List.of("job", "reference")),
          Map.entry("tables", List.of("reference", "assembly")),
          Map.entry("assessment", List.of("mechanics", "assembly", "job", "reference")),
          Map.entry("advice", List.of("assessment", "assembly", "job", "reference")),
          Map.entry("toollist", List.of("advice", "assessment", "job", "reference")),
          Map.entry("wording", List.of("toollist", "advice", "assessment", "job", "reference")),
          Map.entry(
              "formats",
              List.of("wording", "toollist", "advice", "assessment", "job", "reference")),
          Map.entry("drawing", List.of("assessment", "job", "reference")),
          Map.entry(
              "http",
              List.of(
                  "drawing",
                  "formats",
                  "wording",
                  "toollist",
                  "advice",
                  "assessment",
                  "assembly",
                  "job",
                  "tables",
                  "reference")),
          Map.entry(
              "ops",
              List.of("http", "wording", "advice", "assembly", "job", "tables", "reference")));

  private static final List<String> JACKSON = List.of("com.fasterxml.jackson..");

  private static final List<String> FRAMEWORK =
      List.of(
          "io.quarkus..",
          "io.smallrye..",
          "io.vertx..",
          "io.netty..",
          "io.micrometer..",
          "jakarta..",
          "org.eclipse.microprofile..",
          "org.jboss..");

  private static final List<String> XML = List.of("javax.xml.stream..");

  private static final Map<String, List<List<String>>> LIBRARIES =
      Map.of(
          "tables", List.of(JACKSON),
          "formats", List.of(JACKSON, XML),
          "http", List.of(JACKSON, FRAMEWORK),
          "ops", List.of(JACKSON, FRAMEWORK));

  static Stream<String> packages() {
    return ARROWS.keySet().stream().sorted();
  }

  @ParameterizedTest
  @MethodSource("packages")
  void knowsOnlyWhatItMay(String name) {
    List<String> allowed = new ArrayList<>(List.of("java..", "org.jspecify.annotations.."));
    // Mechanics is fed SI doubles: even unit conversion is its callers' work.
    List<String> common = name.equals("mechanics") ? List.of() : List.of("quantity");
    Stream.of(List.of(name), common, ARROWS.getOrDefault(name, List.of()))
        .flatMap(List::stream)
        .forEach(known -> allowed.add(ROOT + "." + known + ".."));
    LIBRARIES.getOrDefault(name, List.of()).forEach(allowed::addAll);
    classes()
        .that()
        .resideInAPackage(ROOT + "." + name + "..")
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
        .check(MAIN);
  }

  @Test
  void everyPackageStandsInTheMap() {
    Set<String> found = new TreeSet<>();
    for (JavaClass type : MAIN) {
      String below = type.getPackageName().substring(ROOT.length() + 1);
      found.add(below.split("\\.", -1)[0]);
    }
    assertThat(found).containsExactlyInAnyOrderElementsOf(ARROWS.keySet());
  }

  @Test
  void packagesFormNoCycles() {
    slices().matching(ROOT + ".(**)").should().beFreeOfCycles().check(MAIN);
  }

  @Test
  void namesSayWhatAClassIs() {
    noClasses().should().haveNameMatching(".*(Impl|Manager|Helper|Helpers|Utils|Util)").check(MAIN);
  }

  @Test
  void nothingPublicAndSharedCanChange() {
    fields().that().arePublic().and().areStatic().should().beFinal().check(MAIN);
    fields()
        .that()
        .arePublic()
        .and()
        .areStatic()
        .should()
        .notHaveRawType(
            com.tngtech.archunit.base.DescribedPredicate.describe("array", JavaClass::isArray))
        .check(MAIN);
  }

  @Test
  void mechanicsSharesNoState() {
    fields()
        .that()
        .areDeclaredInClassesThat(resideInAnyPackage(ROOT + ".mechanics.."))
        .and()
        .areStatic()
        .should()
        .beFinal()
        .check(MAIN);
  }

  @Test
  void nobodyPrintsOrReadsTheClock() {
    noClasses()
        .that(not(resideInAnyPackage(ROOT + ".ops..")))
        .should()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethod(System.class, "currentTimeMillis")
        .orShould()
        .callMethod(System.class, "nanoTime")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.time.Clock")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.time.Instant")
        .orShould()
        .dependOnClassesThat()
        .haveFullyQualifiedName("java.util.concurrent.ThreadLocalRandom")
        .check(MAIN);
  }

  @Test
  void everyPackageExplainsItselfAndIsNullMarked() {
    List<JavaPackage> packages =
        MAIN.stream()
            .map(JavaClass::getPackage)
            .distinct()
            .sorted(ArchitectureTest::byName)
            .toList();
    assertThat(packages).isNotEmpty();
    for (JavaPackage each : packages) {
      assertThat(each.tryGetPackageInfo()).as("package-info of %s", each.getName()).isPresent();
      assertThat(each.isAnnotatedWith(NullMarked.class))
          .as("@NullMarked on %s", each.getName())
          .isTrue();
    }
  }

  private static int byName(JavaPackage one, JavaPackage other) {
    return one.getName().compareTo(other.getName());
  }
}
