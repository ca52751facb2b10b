@echo off
rem SPDX-License-Identifier: EPL-2.0
rem Starts Pitchstack.
rem   pitchstack                          the window
rem   pitchstack --window [--data FOLDER] [FILE...]   the window, showing these files; settings kept in FOLDER
rem   pitchstack ARGUMENT...              the command line, see pitchstack --help
rem Exit code 3: something that Pitchstack needs is missing; what it is stands in one line.
setlocal
set "HOME_DIR=%~dp0"

set "JAVA=java"
set "JAVAW=javaw"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" (
    set "JAVA=%JAVA_HOME%\bin\java.exe"
    set "JAVAW=%JAVA_HOME%\bin\javaw.exe"
)
set "VERSION="
for /f "tokens=3" %%v in ('call "%JAVA%" -version 2^>^&1 ^| findstr /c:" version "') do set "VERSION=%%~v"
if not defined VERSION (
    echo pitchstack: Java is missing; install a Java run-time environment of version 17 or newer.>&2
    exit /b 3
)
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
    echo pitchstack: Java 17 or newer is needed; the one found is version %VERSION%.>&2
    exit /b 3
)

if "%~1"=="" goto window
if "%~1"=="--window" (
    shift
    goto window
)
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%HOME_DIR%plugins\*" pitchstack.cli.Main %*
exit /b %ERRORLEVEL%

:window
set "DATA=%LOCALAPPDATA%\Pitchstack"
if "%~1"=="--data" (
    set "DATA=%~2"
    shift
    shift
)
rem The loop keeps names with spaces in one piece.
set "FILES="
:next
if "%~1"=="" goto start
set FILES=%FILES% "%~1"
shift
goto next

:start
for %%l in ("%HOME_DIR%plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%l"
start "" "%JAVAW%" -jar "%LAUNCHER%" -nosplash -name Pitchstack -configuration "%DATA%\configuration" -data "%DATA%\window" -open %FILES%
