package org.battenbook.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.battenbook.book.Page;
import org.battenbook.number.Rational;
import org.battenbook.number.Real;
import org.battenbook.source.Diagnostic;
import org.battenbook.value.Value;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What the standards say of money, against published examples and by adding bills up. */
class MoneyStandardsTest {
  private static final String BILL = "bill of materials";
  private static final String[] DEMOS = {"saltmarsh-ferry-museum", "skerry-light-reading-room"};

  private static Filled shipped(String name) {
    return ShippedFiles.open(ShippedFiles.WORKBOOKS.resolve(name + ".batten")).fill();
  }

  private static List<String> firing(Filled filled) {
    return filled.cautions().stream().filter(Verdict::isYes).map(Verdict::text).toList();
  }

  private static List<String> broken(Filled filled) {
    return filled.requirements().stream().filter(Verdict::isNo).map(Verdict::text).toList();
  }

  private static Real number(FilledValue value) {
    return ((Value.Amount) value.value()).quantity().number();
  }

  /** Source: the list of ISO 4217 of 2024-06-25, as the data set currency-codes publishes it. */
  @ParameterizedTest
  @CsvSource({
    "USD, 0.01 USD",
    "EUR, 0.01 EUR",
    "GBP, 0.01 GBP",
    "CAD, 0.01 CAD",
    "CHF, 0.01 CHF",
    "MRU, 0.01 MRU",
    "JPY, 1 JPY",
    "KRW, 1 KRW",
    "ISK, 1 ISK",
    "BHD, 0.001 BHD",
    "KWD, 0.001 KWD",
    "TND, 0.001 TND",
    "CLF, 0.0001 CLF"
  })
  void the_smallest_coin_is_that_of_iso_4217(String currency, String coin) {
    PricedJob job = PricedJob.in(currency).line("7 / 5 * minor unit rounded to minor unit");
    assertThat(job.shows("asked")).isEqualTo(coin);
  }

  /**
   * Sources: caterquotes.zendesk.com, article 115001764906 (100 to 125), getadlib.com (80 to 100)
   * and finanshels.com (75 to 100); the last row follows from markup = margin / (1 - margin).
   */
  @ParameterizedTest
  @CsvSource({
    "100, 25 %, 125.00 USD, 25.00 %, 20.00 %",
    "80, 25 %, 100.00 USD, 25.00 %, 20.00 %",
    "75, 1/3, 100.00 USD, ≈ 33.33 %, 25.00 %",
    "40, 100 %, 80.00 USD, 100.00 %, 50.00 %"
  })
  void a_price_comes_by_markup_or_by_the_margin_that_is_the_same(
      String cost, String markup, String price, String asMarkup, String asMargin) {
    PricedJob byMarkup = costing(cost).change("markup", markup);
    assertThat(byMarkup.shows("unit price of Test")).isEqualTo(price);
    assertThat(byMarkup.shows("markup in use")).isEqualTo(asMarkup);
    assertThat(byMarkup.shows("margin in use")).isEqualTo(asMargin);
    PricedJob byMargin =
        costing(cost).change("price rule", "\"margin on price\"").change("margin", asMargin);
    assertThat(byMargin.shows("unit price of Test")).isEqualTo(price);
    assertThat(byMargin.shows("markup in use")).isEqualTo(asMarkup);
  }

  private static PricedJob costing(String cost) {
    return costing(cost, 1);
  }

  private static PricedJob costing(String cost, int quantity) {
    return PricedJob.in("USD").pieces(quantity).change("cost of pieces", cost + " USD");
  }

  @Test
  void a_margin_of_all_the_price_breaks_a_requirement() {
    assertThat(broken(PricedJob.in("USD").change("margin", "100 %").fill()))
        .containsExactly("Margin must be less than 100 % of the price; it is 100 %.");
  }

  /**
   * Sources: a trader may round the tax of an invoice down to the whole penny, HMRC VATREC12010 and
   * VAT Notice 700, section 17.5; 2.0398 and 12.2388 are the worked examples of Countingup's help
   * page.
   */
  @ParameterizedTest
  @CsvSource({
    "20.398, down, 2.03 GBP",
    "20.398, nearest, 2.04 GBP",
    "122.388, nearest, 12.24 GBP",
    "122.388, down, 12.23 GBP",
    "122.25, nearest, 12.23 GBP",
    "122.25, evenly, 12.22 GBP"
  })
  void tax_is_rounded_by_the_rule_that_is_chosen(String net, String rule, String tax) {
    for (String when : List.of("line by line", "once at the end")) {
      PricedJob job =
          charging("GBP", net + " GBP").change("tax rule", "\"%s, %s\"".formatted(rule, when));
      assertThat(job.shows("tax")).as(when).isEqualTo(tax);
    }
  }

  /** Arithmetic: three lines of 1.115 are 3.345 together. */
  @ParameterizedTest
  @CsvSource({
    "'nearest, line by line', 3.36 USD",
    "'nearest, once at the end', 3.35 USD",
    "'evenly, once at the end', 3.34 USD",
    "'evenly, line by line', 3.36 USD",
    "'down, line by line', 3.33 USD",
    "'down, once at the end', 3.34 USD"
  })
  void three_lines_of_tax_come_to_more_or_less_by_when_they_are_rounded(String rule, String tax) {
    PricedJob job =
        charging("USD", "11.15 USD", "11.15 USD", "11.15 USD").change("tax rule", '"' + rule + '"');
    assertThat(job.shows("tax")).isEqualTo(tax);
    assertThat(firing(job.fill()))
        .singleElement()
        .asString()
        .startsWith("Tax is %s by the rule '%s'. Rounded line by line".formatted(tax, rule));
  }

  /** A job with no pieces and these charges, all taxed at a tenth. */
  private static PricedJob charging(String currency, String... amounts) {
    List<String> rows = new ArrayList<>(List.of("charge | amount"));
    for (String amount : amounts) {
      rows.add("\"Test %d\" | %s".formatted(rows.size(), amount));
    }
    return PricedJob.in(currency)
        .change("sales tax", "10 %")
        .rows("job", "charges", rows.toArray(String[]::new));
  }

  @Test
  void tax_goes_by_the_kind_of_charge_and_an_exempt_customer_pays_none() {
    PricedJob job =
        charging("USD", "100 USD")
            .change("delivery price", "20 USD")
            .change("rate of charges \"Delivery\"", "5 %");
    assertThat(job.shows("tax of Test 1")).isEqualTo("10.00 USD");
    assertThat(job.shows("tax of Delivery")).isEqualTo("1.00 USD");
    assertThat(job.shows("total")).isEqualTo("131.00 USD");
    job.change("tax exempt", "true");
    assertThat(job.shows("total")).isEqualTo("120.00 USD");
  }

  @Test
  void a_discount_is_taken_before_tax_and_a_deposit_after_it() {
    PricedJob job =
        costing("100")
            .change("markup", "0 %")
            .change("discount percent", "15 %")
            .change("sales tax", "20 %");
    assertThat(job.shows("net")).isEqualTo("85.00 USD");
    assertThat(job.shows("total")).isEqualTo("102.00 USD");
    assertThat(job.shows("deposit")).isEqualTo("51.00 USD");
    assertThat(job.shows("balance")).isEqualTo("51.00 USD");
  }

  /** Arithmetic: glazing of 10 by 10 in at 10 USD a square foot. */
  @Test
  void a_multi_sided_frame_pays_for_its_glazing() {
    PricedJob job =
        PricedJob.in("USD")
            .change("sheet waste", "0 %")
            .rows(
                "polygons",
                "polygons",
                "title | sides | package side | moulding",
                "\"Test\" | 4 | 10 in | \"ash cap\"")
            .rows(
                BILL,
                "sheet prices",
                "item | glazing | list date | per area",
                "\"G\" | \"glass\" | 2026-01-01 | 10 USD/ft^2");
    assertThat(job.shows("cost of used of G")).isEqualTo("6.94 USD");
    assertThat(job.shows("material of Test")).isEqualTo("≈ 6.94 USD");
  }

  /** Boxes of 10 in, lids for 10 in of art, and hexagons in mats, three of each. */
  private static PricedJob multiSided() {
    return PricedJob.in("USD")
        .change("bench rate", "60 USD/h")
        .change("moulding waste", "0 %")
        .change("sheet waste", "0 %")
        .rows(
            "splayed",
            "splayed",
            "title | sides | opening side | art side | slope | slope width | board thickness |"
                + " wood | kerf | quantity | cleat seat",
            "\"Box\" | 4 | 11 in | | 0 deg | 3 in | 1/2 in | \"red oak\" | 0 in | 3 | 3 in",
            "\"Lid\" | 4 | | 10 in | 0 deg | 3 in | 1/2 in | \"red oak\" | 0 in | 3 | 3 in")
        .rows(
            "polygons",
            "polygons",
            "title | sides | art side | mats | moulding | quantity",
            "\"Six\" | 6 | 8 in | 2 | \"ash cap\" | 3");
  }

  /**
   * Arithmetic: four sides of 12 in, 3 by 1/2 in, are half a board foot; those of a lid of 10 5/8
   * in, 85/192.
   */
  @ParameterizedTest
  @CsvSource({"per volume, 12 USD/bd ft", "section | per length, 1.5 in^2 | 1.50 USD/ft"})
  void splayed_frames_pay_for_their_boards_by_volume_or_by_length(String headings, String price) {
    PricedJob job =
        multiSided()
            .rows(
                BILL,
                "wood prices",
                "item | wood | list date | " + headings,
                "\"Oak\" | \"red oak\" | 2026-01-01 | " + price);
    assertThat(job.shows("wood cost of Box")).isEqualTo("6.00 USD");
    assertThat(number(job.fill().find("wood cost of Lid"))).isEqualTo(Rational.of(85, 16));
    assertThat(job.shows("cost of used of Oak")).isEqualTo("33.94 USD");
    assertThat(job.fill().find("taken of splayed stock \"Box\"").exact()).isEqualTo("3");
    assertThat(job.shows("cost of bought of Oak")).isEqualTo("36.00 USD");
  }

  @Test
  void multi_sided_frames_pay_for_glazing_mats_and_backing() {
    PricedJob job =
        multiSided()
            .rows(
                BILL,
                "sheet prices",
                "item | glazing | board | list date | per area",
                "\"G\" | \"glass\" | | 2026-01-01 | 14.40 USD/ft^2",
                "\"M\" | | \"mat 4-ply\" | 2026-01-01 | 14.40 USD/ft^2",
                "\"F\" | | \"foam board\" | 2026-01-01 | 14.40 USD/ft^2");
    assertThat(job.shows("sheet cost of Box")).isEqualTo("0.00 USD");
    assertThat(job.shows("sheet cost of Lid")).isEqualTo("20.00 USD");
    Filled filled = job.fill();
    double areas =
        2 * number(filled.find("glazing area of Six")).toDouble()
            + number(filled.find("mat board area of Six")).toDouble();
    assertThat(number(filled.find("sheet cost of Six")).toDouble())
        .isCloseTo(areas / 10, Offset.offset(1e-9));
  }

  /**
   * Arithmetic: setting up a frame 5 min and its saw 4, for three; joining and fitting 22 min, a
   * side 1. Glazing takes 2 for three, and 3. A mat takes 4 for three, and 6.
   */
  @Test
  void multi_sided_frames_pay_for_their_labor() {
    PricedJob job = multiSided().change("uses cleat of hung frames", "false");
    assertThat(job.shows("labor of Box")).isEqualTo("29.00 USD");
    assertThat(number(job.fill().find("labor of Lid"))).isEqualTo(Rational.of(32 * 3 + 2, 3));
    assertThat(number(job.fill().find("labor of Six")))
        .isEqualTo(Rational.of((22 + 6 + 3 + 12) * 3 + 9 + 2 + 8, 3));
    assertThat(job.shows("labor cost")).isEqualTo("333.00 USD");
  }

  @Test
  void a_bill_of_multi_sided_frames_adds_up() {
    Filled job =
        multiSided()
            .rows(
                BILL,
                "wood prices",
                "item | wood | list date | per volume",
                "\"Oak\" | \"red oak\" | 2026-01-01 | 11.11 USD/bd ft")
            .fill();
    new BillSums(job).check();
    assertThat(firing(job))
        .contains("ash cap is used but has no price; it counts as 0. Add it to the price list.");
  }

  @Test
  void wood_without_a_price_is_cautioned_and_a_price_by_length_needs_a_section() {
    Filled unpriced = listed(multiSided()).fill();
    assertThat(firing(unpriced))
        .contains("red oak is used but has no price; it counts as 0. Add it to the price list.");
    Filled twice =
        multiSided()
            .rows(
                BILL,
                "wood prices",
                "item | wood | list date | per length",
                "\"Oak\" | \"red oak\" | 2026-01-01 | 1 USD/ft",
                "\"Oak 2\" | \"red oak\" | 2026-01-01 | 1 USD/ft")
            .fill();
    assertThat(broken(twice))
        .contains(
            "Oak: a price per length needs the board's section, width times thickness; it is 0"
                + " in^2. Enter it.",
            "red oak has more than one price; keep one row.");
  }

  /** Arithmetic; common practice, no source: what is sold by the pack is bought by the pack. */
  @ParameterizedTest
  @CsvSource({"0, 0, 0.00", "1, 1, 12.50", "100, 1, 12.50", "101, 2, 25.00", "250, 3, 37.50"})
  void packs_are_bought_whole(int used, int packs, String cost) {
    PricedJob job =
        PricedJob.in("USD")
            .pieces(1)
            .rows(
                BILL,
                "hardware prices",
                "item | list date | per pack | pack of | per frame",
                "\"Clips\" | 2026-01-01 | 12.50 USD | 100 | " + used);
    assertThat(job.shows("packs bought of Clips")).isEqualTo(Integer.toString(packs));
    assertThat(job.shows("cost of bought of Clips")).isEqualTo(cost + " USD");
  }

  /** Arithmetic: 4 frames of 17 ft to 8 ft sticks less half an inch of trims. */
  @Test
  void sticks_and_sheets_are_bought_whole_and_cost_what_is_used_with_its_waste() {
    Filled job = listed(PricedJob.in("USD").pieces(4)).fill();
    Real used = number(job.find("used of M 1"));
    Real sticks = number(job.find("sticks bought of M 1"));
    assertThat(sticks.toDouble()).isEqualTo(Math.ceil(used.toDouble() * 1.15 / 95.5));
    assertThat(number(job.find("bought of M 1"))).isEqualTo(sticks.times(Rational.of(96)));
    assertThat(number(job.find("cost of bought of M 1"))).isEqualTo(sticks.times(Rational.of(24)));
    assertThat(job.find("sheets bought of G 1").exact()).isEqualTo("1");
    assertThat(job.find("cost of bought of G 1").shown().text()).isEqualTo("30.00 USD");
  }

  private static PricedJob listed(PricedJob job) {
    return job.rows(
            BILL,
            "moulding prices",
            "item | moulding | list date | per stick | per united inch",
            "\"M 1\" | \"ash cap\" | 2026-01-01 | 24 USD | 2.40 USD/in")
        .rows(
            BILL,
            "sheet prices",
            "item | glazing | list date | sheet width | sheet height | per sheet",
            "\"G 1\" | \"glass\" | 2026-01-01 | 40 in | 60 in | 30 USD");
  }

  @Test
  void what_the_customer_pays_for_is_one_choice() {
    Filled used = listed(PricedJob.in("USD").pieces(4)).fill();
    PricedJob whole =
        listed(PricedJob.in("USD").pieces(4)).change("customer pays for", "\"material bought\"");
    Filled bought = whole.fill();
    assertThat(used.find("material cost").exact()).isEqualTo(used.find("material used").exact());
    assertThat(bought.find("material cost").exact())
        .isEqualTo(bought.find("material bought").exact());
    Real charged = number(bought.find("material of Test")).times(Rational.of(4));
    assertThat(charged.toDouble())
        .isCloseTo(number(bought.find("material bought")).toDouble(), within());
  }

  /** Rows of the bill are rounded, what a frame is charged for material is not. */
  private static Offset<Double> within() {
    return Offset.offset(0.05);
  }

  @Test
  void minimum_charges_hold_for_a_frame_and_for_what_a_supplier_sells() {
    PricedJob job =
        costing("1")
            .change("minimum price", "45 USD")
            .rows(
                BILL,
                "sheet prices",
                "item | glazing | list date | per area | minimum charge",
                "\"G 1\" | \"glass\" | 2026-01-01 | 9 USD/ft^2 | 25 USD",
                "\"A 1\" | \"acrylic\" | 2026-01-01 | 9 USD/ft^2 | 25 USD");
    assertThat(job.shows("unit price of Test")).isEqualTo("45.00 USD");
    assertThat(job.shows("cost of bought of G 1")).isEqualTo("25.00 USD");
    assertThat(job.shows("cost of bought of A 1")).isEqualTo("0.00 USD");
  }

  /** Common practice, no source: width and height together, up to the next whole inch. */
  @Test
  void a_shop_may_price_by_united_inches() {
    Filled job =
        listed(PricedJob.in("USD").pieces(1)).change("price rule", "\"united inches\"").fill();
    assertThat(job.find("united inches of Test").shown().text()).isEqualTo("35 in");
    assertThat(job.find("unit price of Test").shown().text()).isEqualTo("84.00 USD");
  }

  /**
   * Arithmetic: two saw stops 8 min, joining and fitting 5, a mat 4, glazing 2, a cleat 3, together
   * 22 min for the row; then 41 min for each frame.
   */
  @Test
  void frames_alike_share_their_setups() {
    PricedJob one = PricedJob.in("USD").pieces(1).change("bench rate", "60 USD/h");
    PricedJob six = PricedJob.in("USD").pieces(6).change("bench rate", "60 USD/h");
    assertThat(one.shows("labor of Test")).isEqualTo("63.00 USD");
    assertThat(one.shows("labor cost")).isEqualTo("63.00 USD");
    assertThat(number(six.fill().find("labor of Test"))).isEqualTo(Rational.of(6 * 41 + 22, 6));
    assertThat(six.shows("labor cost")).isEqualTo("268.00 USD");
  }

  @ParameterizedTest
  @ValueSource(strings = {"saltmarsh-ferry-museum", "skerry-light-reading-room"})
  void labor_by_the_piece_is_labor_by_the_step(String demo) {
    Filled job = shipped(demo);
    double byPiece = 0;
    var pieces = Objects.requireNonNull(job.book().table("pieces"));
    var labor = Objects.requireNonNull(pieces.column("labor"));
    var made = Objects.requireNonNull(pieces.column("made"));
    for (int row = 0; row < job.rows(pieces).count(); row++) {
      byPiece += number(job.value(labor, row)).times(number(job.value(made, row))).toDouble();
    }
    assertThat(byPiece).isCloseTo(number(job.find("labor cost")).toDouble(), within());
  }

  @TestFactory
  Stream<DynamicTest> bills_add_up_on_a_pocket_calculator() {
    Stream<DynamicTest> demos =
        Stream.of(DEMOS)
            .map(demo -> DynamicTest.dynamicTest(demo, () -> new BillSums(shipped(demo)).check()));
    Stream<DynamicTest> currencies =
        Stream.of("USD", "JPY", "KWD", "CLF")
            .map(
                currency ->
                    DynamicTest.dynamicTest(currency, () -> new BillSums(bill(currency)).check()));
    return Stream.concat(demos, currencies);
  }

  /** A bill whose every rate leaves a part of the smallest coin. */
  private static Filled bill(String currency) {
    return PricedJob.in(currency)
        .pieces(7)
        .change("bench rate", "1000 / 7 * minor unit / (1 min)")
        .change("hanging rate", "1000 / 3 * minor unit / (1 min)")
        .change("hanging time", "100 min")
        .change("sales tax", "7.7 %")
        .change("discount percent", "3.3 %")
        .change("deposit percent", "1/3")
        .rows(
            BILL,
            "moulding prices",
            "item | moulding | list date | per length",
            "\"M 1\" | \"ash cap\" | 2026-01-01 | (1234 / 7 * minor unit / (1 ft))")
        .fill();
  }

  @Test
  void yen_have_no_decimals_and_dinars_three() {
    assertThat(bill("JPY").find("total").shown().text()).matches("[0-9]+ JPY");
    assertThat(bill("KWD").find("total").shown().text()).matches("[0-9]+\\.[0-9]{3} KWD");
  }

  @Test
  void a_caution_names_what_rounding_each_price_makes_of_the_bill() {
    Filled job = costing("10.004", 3).change("markup", "0 %").fill();
    assertThat(firing(job))
        .contains(
            "Framing is 30.00 USD: each frame's price is rounded, then multiplied. Rounded once at"
                + " the end it would be 30.01 USD, a difference of 0.01 USD.");
  }

  @Test
  void what_has_no_price_is_cautioned_only_where_other_things_have_one() {
    assertThat(firing(PricedJob.in("USD").pieces(1).fill())).isEmpty();
    assertThat(firing(listed(PricedJob.in("USD").pieces(1)).fill()))
        .containsExactlyInAnyOrder(
            "mat 4-ply is used but has no price; it counts as 0. Add it to the price list.",
            "foam board is used but has no price; it counts as 0. Add it to the price list.",
            "plywood 1/2 is used but has no price; it counts as 0. Add it to the price list.");
  }

  @Test
  void an_old_price_list_is_cautioned() {
    PricedJob job = listed(PricedJob.in("USD")).on("2027-06-01");
    assertThat(firing(job.fill()))
        .contains(
            "M 1: its price list is dated 2026-01-01, more than 365 day before the job. Get a new"
                + " list.",
            "G 1: its price list is dated 2026-01-01, more than 365 day before the job. Get a new"
                + " list.");
  }

  @Test
  void a_thing_with_two_prices_breaks_a_requirement() {
    Filled job =
        listed(PricedJob.in("USD"))
            .rows(
                BILL,
                "moulding prices",
                "item | moulding | list date | per stick",
                "\"M 2\" | \"ash cap\" | 2026-01-01 | 22 USD")
            .fill();
    assertThat(broken(job)).containsOnly("ash cap has more than one price; keep one row.");
  }

  @Test
  void a_first_frame_has_no_money_in_it() {
    Filled first = shipped("first-frame");
    assertThat(first.book().page("job")).isNull();
    assertThat(firing(first)).isEmpty();
    assertThat(broken(first)).isEmpty();
  }

  @Test
  void every_rate_says_what_it_is_for_and_whose_it_is() {
    Page rates = shipped("standards/rates").book().page("rates");
    assertThat(rates).isNotNull();
    assertThat(rates.lines())
        .hasSizeGreaterThan(15)
        .allMatch(
            line ->
                line.layer()
                    .note()
                    .matches(
                        ".+; (common practice|published|the shop's own|placeholder|arithmetic).*"));
  }

  @Test
  void no_standard_names_a_currency() throws IOException {
    try (Stream<Path> files = Files.list(ShippedFiles.WORKBOOKS.resolve("standards"))) {
      for (Path file : files.toList()) {
        assertThat(Files.readString(file)).doesNotContain("\ncurrency ").doesNotContain("USD");
      }
    }
  }

  @Test
  void money_of_two_currencies_is_not_added_and_an_unknown_one_is_told_once() {
    assertThat(messages(charging("USD", "5 EUR")))
        .containsExactly("'5 EUR' is money in EUR, but money in USD goes here");
    assertThat(messages(PricedJob.in("USB").pieces(1))).containsExactly("'USB' is not a currency");
  }

  @Test
  void a_price_in_a_job_without_a_currency_asks_for_one() {
    Workbook job =
        ShippedFiles.open(
            """
            workbook "Test"
            follows "standards/priced-shop.batten"
            change minimum price = 45 USD because "a test"
            """);
    assertThat(job.diagnostics())
        .extracting(Diagnostic::repair)
        .containsExactly("add a line 'currency USD' under the workbook's name");
  }

  private static List<String> messages(PricedJob job) {
    return job.open().diagnostics().stream().map(Diagnostic::message).toList();
  }
}
