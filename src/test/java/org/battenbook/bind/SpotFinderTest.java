package org.battenbook.bind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.battenbook.workbook.Filled;
import org.battenbook.workbook.TextLoader;
import org.battenbook.workbook.UnknownPlace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values are found by the names that people type, and a name that misses gets an answer. */
class SpotFinderTest {
  private static final Filled FILLED =
      TextLoader.of(
              """
              workbook "t"
              page saw
                kerf  = 1/8 in
                waste = 1 in
              page mats
                overlap = 1/4 in
                waste   = 2 in
                out of square = 1/16 in
              page wood
                table mouldings by name
                  given
                    name : text
                    face : length
                  worked out
                    used by = count of pieces
                table pieces by title
                  given
                    title    : text
                    quantity : count = 1
                    face     : length
                table panes by pane
                  for each piece of pieces, number to quantity
                    face = piece.face
                  given
                    face : length
                  worked out
                    glazing = face + 1 in
                rows of mouldings
                  name      | face
                  "ash cap" | 1 in
                  "oak"     | 2 in
                rows of pieces
                  title                | quantity | face
                  "Tide chart, north"  | 1        | 10 in
                  "View of the quay"   | 2        | 20 in
                  "oak"                | 1        | 30 in
                  "the ""long"" ferry" | 1        | 40 in
              """)
          .open()
          .fill();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          kerf                              | 1/8
          ' Kerf '                          | 1/8
          saw.kerf                          | 1/8
          saw.waste                         | 1
          Mats.waste                        | 2
          out of square                     | 1/16
          face of ash cap                   | 1
          face of mouldings "ash cap"       | 1
          face of Mouldings "oak"           | 2
          face of pieces "oak"              | 30
          face of "Tide chart, north"       | 10
          FACE of tide chart, NORTH         | 10
          face of View of the quay          | 20
          face of the "long" ferry          | 40
          face of "the ""long"" ferry"      | 40
          glazing of View of the quay: 2    | 21
          used by of oak                    | 4
          """)
  void a_name_finds_one_value(String name, String exact) {
    String typed = name.startsWith("'") ? name.substring(1, name.length() - 1) : name;
    assertThat(FILLED.find(typed).exact()).isEqualTo(exact);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      textBlock =
          """
          waste                 | 'waste' can mean saw.waste or mats.waste; name one of them
          face of oak           | 'face of oak' can mean face of mouldings "oak" or face of pieces "oak"; name one of them
          kref                  | there is nothing called 'kref'; did you mean 'kerf'?
          krf                   | there is nothing called 'krf'; did you mean 'kerf'?
          overlp                | there is nothing called 'overlp'; did you mean 'overlap'?
          saw.overlap           | there is nothing called 'saw.overlap'
          .kerf                 | there is nothing called '.kerf'; did you mean 'kerf'?
          nowhere.kerf          | there is nothing called 'nowhere.kerf'
          used by               | 'used by' is a column of 'mouldings'; name the row: 'used by of ash cap'
          face                  | 'face' is a column of 'mouldings' and 'pieces' and 'panes'; name the row: 'face of ash cap'
          fce of oak            | there is no column 'fce'; did you mean 'face'?
          used by of ash cup    | no row of 'mouldings' is called "ash cup"; did you mean 'ash cap'?
          face of pieces "ok"   | no row of 'mouldings' or 'pieces' or 'panes' is called "pieces "ok""
          face of mouldings "x" | no row of 'mouldings' or 'pieces' or 'panes' is called "x"
          of oak                | there is nothing called 'of oak'
          """)
  void a_name_that_misses_is_answered(String name, String message) {
    assertThatThrownBy(() -> FILLED.find(name))
        .isInstanceOf(UnknownPlace.class)
        .hasMessage(message);
  }
}
