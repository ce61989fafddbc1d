package org.battenbook.logging;

import java.util.Properties;
import org.apache.logging.log4j.Level;
import org.apache.logging.log4j.message.MessageFactory;
import org.apache.logging.log4j.message.ParameterizedMessageFactory;
import org.apache.logging.log4j.simple.SimpleLogger;
import org.apache.logging.log4j.spi.ExtendedLogger;
import org.apache.logging.log4j.spi.LoggerContext;
import org.apache.logging.log4j.util.PropertiesUtil;
import org.jspecify.annotations.Nullable;

/** Loggers that are off, without settings that could turn them on. */
final class SilentContext implements LoggerContext {
  private static final PropertiesUtil NO_SETTINGS = new PropertiesUtil(new Properties());

  @Override
  public @Nullable Object getExternalContext() {
    return null;
  }

  @Override
  public ExtendedLogger getLogger(String name) {
    return getLogger(name, ParameterizedMessageFactory.INSTANCE);
  }

  /** A logger that is off prints nothing, and needs no stream. */
  @Override
  public ExtendedLogger getLogger(String name, MessageFactory messages) {
    return new SimpleLogger(
        name, Level.OFF, false, false, false, false, "", messages, NO_SETTINGS, null);
  }

  @Override
  public boolean hasLogger(String name) {
    return false;
  }

  @Override
  public boolean hasLogger(String name, Class<? extends MessageFactory> messages) {
    return false;
  }

  @Override
  public boolean hasLogger(String name, MessageFactory messages) {
    return false;
  }
}
