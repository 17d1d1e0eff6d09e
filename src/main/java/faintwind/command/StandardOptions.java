package faintwind.command;

import faintwind.terminal.VersionText;
import picocli.CommandLine.Command;

/** The same with help, version and the words of both, for a command that says nothing of them. */
@Command(
    mixinStandardHelpOptions = true,
    versionProvider = VersionText.class,
    resourceBundle = "faintwind.messages")
public final class StandardOptions extends CommonOptions {}
