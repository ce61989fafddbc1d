package org.battenbook.logging;

import java.net.URI;
import org.apache.logging.log4j.spi.LoggerContext;
import org.apache.logging.log4j.spi.LoggerContextFactory;
import org.jspecify.annotations.Nullable;

/** Gives everybody the one context whose loggers are silent. */
public final class SilentContexts implements LoggerContextFactory {
  private static final LoggerContext SILENT = new SilentContext();

  @Override
  public LoggerContext getContext(
      String caller, ClassLoader loader, @Nullable Object external, boolean current) {
    return SILENT;
  }

  @Override
  public LoggerContext getContext(
      String caller,
      ClassLoader loader,
      @Nullable Object external,
      boolean current,
      @Nullable URI configuration,
      @Nullable String name) {
    return SILENT;
  }

  @Override
  public void removeContext(LoggerContext context) {
    // There is one for all, and nothing in it to remove.
  }

  @Override
  public boolean isClassLoaderDependent() {
    return false;
  }
}
