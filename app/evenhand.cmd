@echo off
rem Runs Evenhand. Builds it first if there is no build yet; says so on standard error only.
rem Does as the launcher for a shell beside it, but has not been tested.
setlocal
rem Not HOME: names of variables know no capitals here, and Maven and Java see them.
set "here=%~dp0"
set "jar=%here%target\evenhand.jar"
set "target=%here%target"
set "java=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set compiling=-XX:TieredStopAtLevel=1
set flags=-XX:+UseSerialGC -XX:-UsePerfData -Dfile.encoding=UTF-8
rem Java's own warnings go to standard output otherwise, into the middle of an answer.
set warnings=-Xlog:disable -Xlog:all=warning:stderr

if not "%java%"=="java" goto java
for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java (
    echo evenhand: needs Java 17 or later, and finds no java on the path>&2
    exit /b 2
)
:java
if "%~1"=="::archive" goto archive

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

:run
set "name=evenhand"
if "%~1"=="" goto window
if not "%~1"=="window" goto start
:window
rem A window is open for long: it is compiled fully.
set "name=evenhand-window"
set compiling=
:start
rem An archive that is not of this jar and this build of Java is not even shown to Java, which would only complain of it.
call :stale
set "shared="
if not defined stale if exist "%target%\%name%.jsa" set shared=-XX:SharedArchiveFile="%target%\%name%.jsa"
rem Answers are in UTF-8; the console gets its own code page back afterwards.
set "page="
for /f "tokens=2 delims=:." %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul 2>nul
"%java%" %compiling% %flags% %warnings% %shared% -jar "%jar%" %*
set "status=%errorlevel%"
if defined page chcp %page% >nul 2>nul
rem The answer came first; the archive is made behind it, out of everyone's way. No harm if it cannot be made.
if defined stale start "" /low /b cmd /d /c ""%~f0" ::archive %name%" >nul 2>nul <nul
exit /b %status%

rem What an archive is good for: this jar in this place, of this size and age, and this build of Java, by the file beside it or,
rem without one, by what it says of itself.
:mark
for %%f in ("%jar%") do (echo %%~ff %%~zf %%~tf)>"%now%" 2>nul
for %%j in ("%java%") do (
    echo %%~fj %%~zj %%~tj>>"%now%"
    if exist "%%~dpj..\release" (type "%%~dpj..\release">>"%now%") else ("%java%" -version 2>>"%now%")
)
exit /b 0

rem Whether the archive of this name was made for another jar or Java, or none was tried.
:stale
set "stale=1"
set "now=%target%\%name%.%random%%random%.now"
call :mark
if exist "%target%\%name%.archive" fc /b "%now%" "%target%\%name%.archive" >nul 2>nul && set "stale="
del "%now%" >nul 2>nul
exit /b 0

rem One maker at a time: only one can make this folder. One that is older than a day was left by a maker that was killed.
:archive
set "name=%~2"
set "work=%target%\archiving"
forfiles /p "%target%" /m archiving /d -1 /c "cmd /d /c rd /s /q @path" >nul 2>nul
md "%work%" 2>nul || exit /b 1
call :stale
if not defined stale goto made
set "car=%here%..\scenarios\harbour-saloon.json"
if "%name%"=="evenhand" (
    "%java%" -XX:DumpLoadedClassList="%work%\lst" %compiling% %flags% -jar "%jar%" balance "%car%"
) else (
    "%java%" -Djava.awt.headless=true -XX:DumpLoadedClassList="%work%\lst" %flags% -cp "%jar%" evenhand.window.Rehearsal
)
"%java%" -Xshare:dump -XX:SharedClassListFile="%work%\lst" -XX:SharedArchiveFile="%work%\jsa" -cp "%jar%"
if errorlevel 1 (del "%target%\%name%.jsa") else (move /y "%work%\jsa" "%target%\%name%.jsa")
set "now=%work%\made"
call :mark
move /y "%now%" "%target%\%name%.archive"
:made
rd /s /q "%work%"
exit /b 0
