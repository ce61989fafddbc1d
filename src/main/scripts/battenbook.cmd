@echo off
rem Starts Battenbook from the jar beside this script.
rem
rem The first job that runs leaves an archive of the loaded classes beside the jar, so that later
rem runs start sooner. Without one, or with one that does not fit, everything works the same.
rem
rem JAVA_HOME                chooses the Java to run with; else it is the first one on the path
rem BATTENBOOK_JAVA_OPTIONS  further options for Java, such as -Xmx4g for more memory

setlocal EnableExtensions DisableDelayedExpansion
set "oldest_java=17"
set "jar=%~dp0battenbook.jar"
if not exist "%jar%" (
  echo battenbook: '%jar%' is missing; keep this script and the jar in one folder 1>&2
  exit /b 2
)

set "java=java.exe"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
set "java_version="
for /f "tokens=3" %%v in ('call "%java%" -version 2^>^&1 ^| findstr /c:" version "') do set "java_version=%%~v"
if not defined java_version (
  echo battenbook: Java is missing; install Java %oldest_java% or later, or set JAVA_HOME to it 1>&2
  exit /b 2
)
for /f "tokens=1 delims=.-+" %%v in ("%java_version%") do set "major=%%v"
if %major% LSS %oldest_java% (
  echo battenbook: this is Java %java_version%; install Java %oldest_java% or later, or set JAVA_HOME to it 1>&2
  exit /b 2
)

set "archive=%~dp0battenbook-java-%java_version%.jsa"
set "quiet=-Xshare:auto -Xlog:disable -Xlog:all=error:stderr"
rem The full compiler waits for code that large jobs run: it costs short ones more than it gives.
set "quick=-XX:+UseSerialGC -XX:Tier4InvocationThreshold=200000 -XX:Tier4MinInvocationThreshold=24000 -XX:Tier4CompileThreshold=600000 -XX:Tier4BackEdgeThreshold=1600000"
set "job="
for %%c in (fill cuts why feeds) do if "%~1"=="%%c" set "job=yes"

rem The newest of the jar and its archives: an archive that is older than the jar is made again.
set "newest="
for /f "delims=" %%f in ('dir /b /o-d "%~dp0battenbook*.j*" 2^>nul') do if not defined newest set "newest=%%f"
if exist "%archive%" if /i not "%newest%"=="battenbook.jar" goto run
if not defined job goto run

set "part=%archive%.%RANDOM%"
"%java%" %quiet% %quick% -XX:ArchiveClassesAtExit="%part%" %BATTENBOOK_JAVA_OPTIONS% -jar "%jar%" %*
set "status=%ERRORLEVEL%"
if exist "%part%" move /y "%part%" "%archive%" >nul 2>&1
if exist "%part%" del /q "%part%" >nul 2>&1
exit /b %status%

:run
"%java%" %quiet% %quick% -XX:SharedArchiveFile="%archive%" %BATTENBOOK_JAVA_OPTIONS% -jar "%jar%" %*
exit /b %ERRORLEVEL%
