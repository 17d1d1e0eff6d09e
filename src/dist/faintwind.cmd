@echo off
rem Starts Faintwind from its folder with the Java that lies in it. Needs nothing else on the machine.
setlocal
set "HERE=%~dp0"
"%HERE%runtime\bin\java.exe" -XX:+UseSerialGC -Djdk.console=java.base -jar "%HERE%faintwind.jar" %*
