package org.cotyla.cli;

import picocli.CommandLine;
import picocli.CommandLine.IFactory;

/** Makes the commands, and hands each its surroundings. */
record CommandFactory(Terminal terminal) implements IFactory {

  @Override
  public <K> K create(Class<K> type) throws Exception {
    if (type == RecommendCommand.class) {
      return type.cast(new RecommendCommand(terminal));
    }
    if (type == BlankCaseCommand.class) {
      return type.cast(new BlankCaseCommand(terminal));
    }
    if (type == ReplanCommand.class) {
      return type.cast(new ReplanCommand(terminal));
    }
    if (type == WhatMattersCommand.class) {
      return type.cast(new WhatMattersCommand(terminal));
    }
    if (type == SmallestChangeCommand.class) {
      return type.cast(new SmallestChangeCommand(terminal));
    }
    return CommandLine.defaultFactory().create(type);
  }
}
