package org.battenbook;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
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

/** Keeps the arrows between the packages, as DEVELOPERS.md draws them. */
class ArchitectureTest {
  /** Each package, and whose floor it stands on: it may import those, and what they stand on. */
  private static final Map<String, List<String>> STANDS_ON =
      read(
          """
          bound     :
          number    : bound
          source    :
          graph     :
          unit      : number
          value     : unit
          syntax    : number source
          parse     : syntax
          column    : number
          operation : value source column
          listing   : number source
          logging   :
          picture   :
          saving    :
          book      : parse unit listing picture
          bind      : book value
          check     : bind operation
          plan      : number
          tolerance : check
          evaluate  : tolerance graph
          derive    : evaluate
          planstore : plan
          cutting   : evaluate planstore
          edit      : bind
          workbook  : derive cutting edit saving
          keep      : workbook
          answer    : keep
          export    : workbook
          cli       : answer export
          """);

  /**
   * Libraries, and the one package that imports each; but of the spreadsheet library {@code export}
   * has the part that writes, and {@code listing} the part that reads without holding all.
   */
  private static final Map<String, List<String>> LIBRARIES =
      Map.of(
          "parse", List.of("org.antlr.."),
          "listing",
              List.of(
                  "org.apache.commons.csv..",
                  "org.apache.commons.compress..",
                  "org.apache.poi.openxml4j..",
                  "org.apache.poi.ss.usermodel..",
                  "org.apache.poi.util..",
                  "org.apache.poi.xssf.eventusermodel..",
                  "org.apache.poi.xssf.model..",
                  "org.xml.sax.."),
          "export",
              List.of(
                  "org.apache.poi..", "org.apache.commons.compress..", "org.apache.commons.io.."),
          "logging", List.of("org.apache.logging.log4j.."),
          "plan", List.of("org.ojalgo.."),
          "answer", List.of("com.fasterxml.."),
          "cli", List.of("picocli.."));

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
    below(name).forEach(floor -> allowed.add(ours(floor)));
    allowed.add(ours(name));
    allowed.addAll(LIBRARIES.getOrDefault(name, List.of()));
    classes()
        .that()
        .resideInAPackage(ours(name))
        .should()
        .onlyDependOnClassesThat(resideInAnyPackage(allowed.toArray(String[]::new)))
        .check(PROGRAM);
  }

  @Test
  void every_package_has_its_place_among_them() {
    Set<String> found =
        PROGRAM.stream()
            .map(c -> c.getPackageName().replaceFirst("org\\.battenbook\\.(\\w+).*", "$1"))
            .collect(Collectors.toCollection(TreeSet::new));
    assertThat(STANDS_ON.keySet()).containsExactlyInAnyOrderElementsOf(found);
  }

  @Test
  void only_what_saves_or_loads_or_keeps_temporary_files_and_the_command_line_touch_files() {
    noClasses()
        .that(
            areNot(
                "saving",
                "workbook.FolderLoader",
                "workbook.JobFolder",
                "export.TemporaryFolder",
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

  private static DescribedPredicate<JavaClass> areNot(String... names) {
    return DescribedPredicate.describe(
        "are not in " + Arrays.toString(names),
        c -> Arrays.stream(names).noneMatch(n -> isIn(c.getName(), "org.battenbook." + n)));
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

  private static String ours(String name) {
    return "org.battenbook." + name + "..";
  }

  private static Set<String> below(String name) {
    Set<String> floors = new TreeSet<>();
    for (String floor : STANDS_ON.getOrDefault(name, List.of())) {
      floors.add(floor);
      floors.addAll(below(floor));
    }
    return floors;
  }

  private static Map<String, List<String>> read(String table) {
    Map<String, List<String>> rows = new LinkedHashMap<>();
    for (String line : table.lines().toList()) {
      int colon = line.indexOf(':');
      String floors = line.substring(colon + 1).trim();
      rows.put(
          line.substring(0, colon).trim(),
          Pattern.compile(" ").splitAsStream(floors).filter(f -> !f.isEmpty()).toList());
    }
    return rows;
  }
}
