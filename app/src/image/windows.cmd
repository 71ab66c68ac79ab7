@echo off
rem UNTESTED: nobody has run this on Windows yet. The same recipe as beside it for Linux, by jpackage of the JDK.
rem   app\src\image\windows.cmd TARGET VERSION JAVA_HOME
rem Makes TARGET\Evenhand-VERSION.msi where WiX 3 is on the path, and always the folder TARGET\Evenhand to copy: the window
rem (Evenhand.exe) with its file type .evenhand, and the program for the terminal (evenhand-terminal.exe).
setlocal
set "here=%~dp0"
set "root=%here%..\..\.."
set "target=%~f1"
set "version=%~2"
set "jdk=%~f3"
set "work=%target%\image.work"

if not exist "%jdk%\jmods" (
    echo image: no jmods in %jdk%: a whole JDK is needed>&2
    exit /b 1
)
if not exist "%target%\legal\THIRD-PARTY.txt" (
    echo image: no legal\THIRD-PARTY.txt in %target%: build with mvn -Pimage package>&2
    exit /b 1
)
if exist "%work%" rd /s /q "%work%"
md "%work%\jars\lib" || exit /b 1
copy /y "%target%\evenhand.jar" "%work%\jars" >nul || goto failed
copy /y "%target%\lib\*.jar" "%work%\jars\lib" >nul || goto failed
xcopy /q /e /i "%root%\scenarios" "%work%\jars\scenarios" >nul || goto failed
xcopy /q /e /i "%target%\legal" "%work%\jars\legal" >nul || goto failed
copy /y "%here%legal\*" "%work%\jars\legal" >nul || goto failed
copy /y "%target%\evenhand.cdx.json" "%work%\jars\legal" >nul || goto failed
copy /y "%root%\LICENSE" "%work%\jars" >nul || goto failed

echo image: Java, as much of it as is used
set "modules="
pushd "%work%\jars"
setlocal enabledelayedexpansion
set "jars=evenhand.jar"
for %%j in (lib\*.jar) do set "jars=!jars! %%j"
"%jdk%\bin\jdeps" --multi-release 17 --ignore-missing-deps --print-module-deps !jars! >"%work%\modules.txt" 2>nul
endlocal
popd
rem The last line; warnings stand before it.
for /f "usebackq delims=" %%m in ("%work%\modules.txt") do set "modules=%%m"
if not defined modules goto failed
"%jdk%\bin\jlink" --module-path "%jdk%\jmods" --add-modules "%modules%,jdk.accessibility" --output "%work%\runtime" --strip-java-debug-attributes --no-header-files --no-man-pages || goto failed
"%work%\runtime\bin\java" -Xshare:dump >nul 2>nul

echo image: the application
"%jdk%\bin\java" "%here%Icon.java" "%here%share\evenhand.svg" 256 "%work%\evenhand.ico" || goto failed
(
    echo main-jar=evenhand.jar
    echo main-class=evenhand.start.Main
    echo java-options=-XX:+UseSerialGC -XX:-UsePerfData -XX:TieredStopAtLevel=1 -Dfile.encoding=UTF-8 -Devenhand.called=evenhand-terminal
    echo win-console=true
)>"%work%\terminal.properties"
(
    echo extension=evenhand
    echo mime-type=application/x-evenhand+json
    echo description=Evenhand scenario
)>"%work%\scenario.properties"
set common=--name Evenhand --app-version %version% --input "%work%\jars" --main-jar evenhand.jar --main-class evenhand.start.Main --runtime-image "%work%\runtime" --icon "%work%\evenhand.ico" --java-options "-XX:+UseSerialGC -XX:-UsePerfData -Dfile.encoding=UTF-8" --arguments window --add-launcher evenhand-terminal="%work%\terminal.properties"
if exist "%target%\Evenhand" rd /s /q "%target%\Evenhand"
"%jdk%\bin\jpackage" --type app-image --dest "%target%" %common% || goto failed
where light.exe >nul 2>nul
if errorlevel 1 (
    echo image: WiX 3 is not on the path, so no installer; %target%\Evenhand can be copied as it is
    goto done
)
"%jdk%\bin\jpackage" --type msi --dest "%target%" %common% --file-associations "%work%\scenario.properties" --win-menu --win-dir-chooser --win-per-user-install --license-file "%root%\LICENSE" || goto failed
:done
rd /s /q "%work%"
exit /b 0
:failed
echo image: failed, the lines above say where>&2
rd /s /q "%work%"
exit /b 1
