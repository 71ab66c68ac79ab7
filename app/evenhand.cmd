@echo off
rem Runs Evenhand. Builds it first if there is no build yet; says so on standard error only.
setlocal
rem Not HOME: names of variables know no capitals here, and Maven and Java see them.
set "here=%~dp0"
set "jar=%here%target\evenhand.jar"
set "archive=%here%target\evenhand.jsa"
set "window=%here%target\evenhand-window.jsa"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set compiling=-XX:TieredStopAtLevel=1
set flags=-XX:+UseSerialGC -XX:-UsePerfData -Dfile.encoding=UTF-8

if not "%java%"=="java" goto java
where java >nul 2>nul
if errorlevel 1 (
    echo evenhand: needs Java 17 or later, and finds no java on the path>&2
    exit /b 2
)
:java

if exist "%jar%" goto run
where mvn >nul 2>nul
if errorlevel 1 (
    echo evenhand: is not built yet and needs Maven for that: no mvn on the path>&2
    exit /b 2
)
echo evenhand: first use: building, which takes a minute or so>&2
pushd "%here%.."
call mvn -B -ntp -q -DskipTests -pl app -am package 1>&2 <nul
popd
if not exist "%jar%" (
    echo evenhand: the build failed, the lines above say why>&2
    exit /b 2
)
rem The classes of a usual command in an archive that Java starts faster from; no harm if it cannot be made.
"%java%" -XX:DumpLoadedClassList="%archive%.lst" %flags% -jar "%jar%" balance "%here%..\scenarios\harbour-saloon.json" >nul 2>nul <nul
"%java%" -Xshare:dump -XX:SharedClassListFile="%archive%.lst" -XX:SharedArchiveFile="%archive%" -cp "%jar%" >nul 2>nul <nul
"%java%" -Djava.awt.headless=true -XX:DumpLoadedClassList="%window%.lst" %flags% -cp "%jar%" evenhand.window.Rehearsal >nul 2>nul <nul
"%java%" -Xshare:dump -XX:SharedClassListFile="%window%.lst" -XX:SharedArchiveFile="%window%" -cp "%jar%" >nul 2>nul <nul

:run
if "%~1"=="" goto window
if not "%~1"=="window" goto start
:window
rem A window is open for long: it is compiled fully.
set "archive=%window%"
set compiling=
:start
rem Answers are in UTF-8; the console gets its own code page back afterwards.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul 2>nul
"%java%" %compiling% %flags% -Xshare:auto -XX:SharedArchiveFile="%archive%" -jar "%jar%" %*
set "status=%errorlevel%"
if defined page chcp %page% >nul 2>nul
exit /b %status%
