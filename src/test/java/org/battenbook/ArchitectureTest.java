package org.battenbook;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Keeps the arrows between the packages, as DEVELOPERS.md draws them. A subpackage is a package
 * like any other, with rows of its own in the two tables.
 */
class ArchitectureTest {
  private static final String OURS = "org.battenbook.";

  /**
   * Each package, and the packages that it stands on. It may import those, and all that they stand
   * on.
   */
  private static final Map<String, List<String>> STANDS_ON =
      table(
          """
          bound           :
          number          : bound
          source          :
          graph           :
          unit            : number
          value           : unit
          syntax          : number source
          parse.generated :
          parse           : syntax parse.generated
          column          : number
          operation       : value source column
          listing         : number source
          logging         :
          picture         :
          saving          :
          book            : parse unit listing picture
          bind            : book value
          check           : bind operation
          tolerance       : check
          evaluate        : tolerance graph
          derive          : evaluate
          plan            : number
          plan.stick      : plan
          plan.sheet      : plan
          planstore       : plan.stick plan.sheet
          cutting         : evaluate planstore
          edit            : bind
          workbook        : derive cutting edit saving
          keep            : workbook
          answer          : keep
          export.file     : value
          export.layout   : export.file bind
          export.formula  : export.layout evaluate
          export          : export.formula workbook
          cli             : answer export
          """);

  /**
   * The libraries that a package may import. No other package may import them. {@code listing}
   * reads spreadsheets as streams, {@code export.file} writes them; both name their parts of the
   * library.
   */
  private static final Map<String, List<String>> LIBRARIES =
      table(
          """
          parse.generated : org.antlr..
          parse           : org.antlr..
          listing         : org.apache.commons.csv.. org.apache.commons.compress.. org.xml.sax..
          listing         : org.apache.poi.openxml4j.. org.apache.poi.ss.usermodel..
          listing         : org.apache.poi.util.. org.apache.poi.xssf.eventusermodel..
          listing         : org.apache.poi.xssf.model..
          export.file     : org.apache.poi.. org.apache.commons.compress.. org.apache.commons.io..
          logging         : org.apache.logging.log4j..
          plan.stick      : org.ojalgo..
          answer          : com.fasterxml..
          cli             : picocli..
          """);

  private static final JavaClasses PROGRAM =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("org.battenbook");

  @TestFactory
  Stream<DynamicTest> a_package_imports_only_what_it_stands_on() {
    return STANDS_ON.keySet().stream().map(name -> dynamicTest(name, () -> imports(name)));
  }

  private static void imports(String name) {
    List<String> allowed = new ArrayList<>(List.of("java..", "javax..", "org.jspecify.."));
    below(name).forEach(floor -> allowed.add(OURS + floor));
    allowed.add(OURS + name);
    allowed.addAll(LIBRARIES.getOrDefault(name, List.of()));
    classes()
        .that()
        .resideInAPackage(OURS + name)
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
        .check(PROGRAM);
  }

  /** A package that holds nothing but its description counts as missing. */
  @Test
  void exactly_the_packages_with_classes_are_listed() {
    Set<String> found =
        PROGRAM.stream()
            .filter(c -> !c.getSimpleName().equals("package-info"))
            .map(c -> c.getPackageName().substring(OURS.length()))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(STANDS_ON.keySet()).containsExactlyInAnyOrderElementsOf(found);
  }

  @Test
  void no_packages_form_a_circle() {
    slices().matching(OURS + "(**)").should().beFreeOfCycles().check(PROGRAM);
  }

  /** So that an arrow goes from the table when the last import that needs it is gone. */
  @TestFactory
  Stream<DynamicTest> each_arrow_is_needed() {
    return arrows(STANDS_ON, OURS);
  }

  @TestFactory
  Stream<DynamicTest> each_library_is_needed() {
    return arrows(LIBRARIES, "");
  }

  private static Stream<DynamicTest> arrows(Map<String, List<String>> table, String prefix) {
    return table.entrySet().stream()
        .flatMap(row -> row.getValue().stream().map(to -> arrow(row.getKey(), prefix + to)));
  }

  private static DynamicTest arrow(String from, String to) {
    return dynamicTest(from + " to " + to, () -> assertThat(isThere(from, to)).isTrue());
  }

  private static boolean isThere(String from, String to) {
    return PROGRAM.stream().anyMatch(c -> isIn(c, from) && imports(c, to));
  }

  private static boolean isIn(JavaClass type, String name) {
    return type.getPackageName().equals(OURS + name);
  }

  private static boolean imports(JavaClass type, String packages) {
    return type.getDirectDependenciesFromSelf().stream()
        .anyMatch(d -> resideInAPackage(packages).test(d.getTargetClass()));
  }

  @Test
  void only_what_saves_or_loads_or_keeps_temporary_files_and_the_command_line_touch_files() {
    noClasses()
        .that(
            areNot(
                "saving",
                "workbook.FolderLoader",
                "workbook.MissingFolder",
                "workbook.JobFolder",
                "workbook.MissingFile",
                "workbook.ShippedStandards",
                "export.file.TemporaryFolder",
                "logging.SilentContexts",
                "cli"))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.nio.file..", "java.nio.channels..", "java.net..")
                .or(nameMatching("java\\.io\\.(File|RandomAccess)\\w*")))
        .check(PROGRAM);
  }

  @Test
  void only_the_command_line_asks_the_environment() {
    noClasses()
        .that(areNot("cli"))
        .should()
        .callMethodWhere(calls("java\\.lang\\.System", "getenv|getProperty|getProperties|exit"))
        .orShould()
        .callMethodWhere(calls("java\\.lang\\.System", "console|lineSeparator|setOut|setErr"))
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .check(PROGRAM);
  }

  /** Every text that people see is made safe there; nothing else can print. */
  @Test
  void only_the_output_of_the_command_line_prints() {
    noClasses()
        .that(areNot("cli.Output"))
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("java.util.logging..")
                .or(nameMatching("java\\.io\\.(Print(Stream|Writer)|FileWriter)"))
                .or(nameMatching("java\\.lang\\.System\\$Logger.*")))
        .orShould()
        .accessField(System.class, "out")
        .orShould()
        .accessField(System.class, "err")
        .orShould()
        .callMethodWhere(calls("java\\..*", "printStackTrace|dumpStack|getLogger"))
        .check(PROGRAM);
    noClasses()
        .that(areNot("cli.Terminal"))
        .should()
        .dependOnClassesThat(nameMatching("java\\.io\\.(Console|FileDescriptor|FileOutputStream)"))
        .check(PROGRAM);
    noClasses()
        .should()
        .callMethodWhere(calls("picocli\\.CommandLine", "usage|print\\w*|execute|getOut|getErr"))
        .check(PROGRAM);
  }

  @Test
  void nothing_reads_a_clock() {
    noClasses()
        .should()
        .callMethodWhere(calls("java\\.lang\\.System", "currentTimeMillis|nanoTime"))
        .orShould()
        .callMethodWhere(calls("java\\.time\\..*", "now|system\\w*"))
        .orShould()
        .dependOnClassesThat(nameMatching("java\\.util\\.(Date|Calendar|Timer)"))
        .check(PROGRAM);
  }

  @Test
  void nothing_asks_for_the_locale_or_draws_lots() {
    noClasses()
        .should()
        .callMethodWhere(calls("java\\.util\\.Locale", "getDefault"))
        .orShould()
        .dependOnClassesThat(
            nameMatching(
                "java\\.util\\.(Random|SplittableRandom)|java\\.text\\.(\\w*Format\\w*|Collator)"))
        .orShould()
        .callMethodWhere(calls("java\\.lang\\.Math|java\\.util\\.UUID", "random|randomUUID"))
        .check(PROGRAM);
  }

  /** Java makes public what planners share; for everybody else it is as if it were not. */
  @Test
  void only_planners_use_the_parts_of_a_search() {
    noClasses()
        .that()
        .resideOutsideOfPackage("org.battenbook.plan..")
        .should()
        .dependOnClassesThat(
            resideInAnyPackage("org.battenbook.plan")
                .and(not(nameMatching(".*\\.(PlanWatch|Refusal)"))))
        .check(PROGRAM);
  }

  private static DescribedPredicate<JavaClass> areNot(String... names) {
    assertThat(names).allMatch(n -> PROGRAM.stream().anyMatch(c -> isIn(c.getName(), OURS + n)));
    return DescribedPredicate.describe(
        "are not in " + Arrays.toString(names),
        c -> Arrays.stream(names).noneMatch(n -> isIn(c.getName(), OURS + n)));
  }

  private static boolean isIn(String name, String place) {
    return name.equals(place) || name.startsWith(place + ".") || name.startsWith(place + "$");
  }

  private static DescribedPredicate<JavaCall<?>> calls(String type, String methods) {
    return DescribedPredicate.describe(
        type + "." + methods,
        call ->
            call.getTargetOwner().getName().matches(type)
                && call.getTarget().getName().matches(methods));
  }

  private static Set<String> below(String name) {
    Set<String> floors = new TreeSet<>();
    for (String floor : STANDS_ON.getOrDefault(name, List.of())) {
      floors.add(floor);
      floors.addAll(below(floor));
    }
    return floors;
  }

  /** Rows of a name, a colon, and words; a name may have several rows. */
  private static Map<String, List<String>> table(String rows) {
    Map<String, List<String>> table = new LinkedHashMap<>();
    for (String row : rows.lines().toList()) {
      int colon = row.indexOf(':');
      List<String> words =
          table.computeIfAbsent(row.substring(0, colon).trim(), n -> new ArrayList<>());
      Pattern.compile(" ")
          .splitAsStream(row.substring(colon + 1))
          .filter(w -> !w.isEmpty())
          .forEach(words::add);
    }
    return table;
  }
}
