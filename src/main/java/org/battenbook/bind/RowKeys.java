package org.battenbook.bind;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.battenbook.source.Diagnostics;
import org.battenbook.source.NearNames;
import org.battenbook.source.Span;
import org.battenbook.syntax.Name;

/** The names of the rows of one table: an index from name to row. */
public final class RowKeys {
  private final String table;
  private final List<String> names;
  private final Map<String, Integer> rows;

  private RowKeys(String table, List<String> names, Map<String, Integer> rows) {
    this.table = table;
    this.names = names;
    this.rows = rows;
  }

  /** The names of the rows in order, as written. */
  public List<String> names() {
    return names;
  }

  public String name(int row) {
    return names.get(row);
  }

  /**
   * The row with a name; empty if there is none. Names are compared by {@link Name#key}: without
   * regard to case and outer spaces, in composed Unicode form.
   */
  public Optional<Integer> row(String name) {
    return Optional.ofNullable(rows.get(Name.key(name)));
  }

  /** The message for a name that no row has. */
  public String missing(String name) {
    return "no row of '%s' is called \"%s\"".formatted(table, name);
  }

  /** The advice for a name that no row has: similar names, if there are any. */
  public String repair(String name) {
    return NearNames.question(name, names);
  }

  /** Collects the names of the rows in order. */
  public static final class Builder {
    private final String table;
    private final Diagnostics diagnostics;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> rows = new HashMap<>();
    private final List<Span> spans = new ArrayList<>();

    public Builder(String table, Diagnostics diagnostics) {
      this.table = table;
      this.diagnostics = diagnostics;
    }

    /** Adds the next row. A name that an earlier row has is reported as {@code duplicate-row}. */
    public void add(String name, Span span) {
      Integer earlier = rows.putIfAbsent(Name.key(name), names.size());
      if (earlier != null) {
        diagnostics.fault(
            "duplicate-row",
            span,
            "'%2$s' already has a row \"%1$s\", at %3$s"
                .formatted(name, table, spans.get(earlier).place()),
            "give each row a different name");
      }
      names.add(name);
      spans.add(span);
    }

    public RowKeys build() {
      return new RowKeys(table, List.copyOf(names), Map.copyOf(rows));
    }
  }
}
