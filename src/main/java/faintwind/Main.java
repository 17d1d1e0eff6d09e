package faintwind;

/** Entry point of the launcher. */
public final class Main {
  private Main() {}

  public static void main(String[] arguments) {
    System.exit(arguments.length);
  }
}
