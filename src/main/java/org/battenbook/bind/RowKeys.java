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

/** What the rows of one table are called, and which row a name calls. */
public final class RowKeys {
  private final String table;
  private final List<String> names;
  private final Map<String, Integer> rows;

  private RowKeys(String table, List<String> names, Map<String, Integer> rows) {
    this.table = table;
    this.names = names;
    this.rows = rows;
  }

  /** The names of the rows in their order, as written. */
  public List<String> names() {
    return names;
  }

  public String name(int row) {
    return names.get(row);
  }

  /** The row that a name calls; compared trimmed, without case, composed. */
  public Optional<Integer> row(String name) {
    return Optional.ofNullable(rows.get(Name.key(name)));
  }

  /** What to say of a name that calls no row. */
  public String missing(String name) {
    return "no row of '%s' is called \"%s\"".formatted(table, name);
  }

  /** What to write instead of a name that calls no row. */
  public String repair(String name) {
    return NearNames.question(name, names);
  }

  /** Gathers the rows one after another. */
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

    /** Adds the next row; a name that an earlier row has is a fault. */
    public void add(String name, Span span) {
      Integer earlier = rows.putIfAbsent(Name.key(name), names.size());
      if (earlier != null) {
        diagnostics.fault(
            "duplicate-row",
            span,
            "\"%s\" names a row of '%s' already, at %s"
                .formatted(name, table, spans.get(earlier).place()),
            "give each row a name of its own");
      }
      names.add(name);
      spans.add(span);
    }

    public RowKeys build() {
      return new RowKeys(table, List.copyOf(names), Map.copyOf(rows));
    }
  }
}
