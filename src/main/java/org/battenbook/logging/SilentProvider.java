package org.battenbook.logging;

import org.apache.logging.log4j.spi.NoOpThreadContextMap;
import org.apache.logging.log4j.spi.Provider;
import org.apache.logging.log4j.spi.ThreadContextMap;

/**
 * Makes the loggers of the spreadsheet library silent: our own messages say what is wrong with a
 * file. Log4j takes the provider of the highest priority and this one has the lowest, so that a
 * program with logging of its own keeps it.
 */
public final class SilentProvider extends Provider {

  /** Is called by Log4j, which finds this class in {@code META-INF/services}. */
  public SilentProvider() {
    super(Integer.MIN_VALUE, CURRENT_VERSION, SilentContexts.class);
  }

  @Override
  public ThreadContextMap getThreadContextMapInstance() {
    return NoOpThreadContextMap.INSTANCE;
  }
}
