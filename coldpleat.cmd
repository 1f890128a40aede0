@echo off
rem Starts Coldpleat from a source checkout. Builds it first if it was never built or if a source is newer than the build.
setlocal
set "HOME_DIR=%~dp0"
set "APP=%HOME_DIR%ui\target\app"
set "STAMP=%APP%\.built"
set "ARCHIVE=%APP%\.classes.jsa"
set "REHEARSAL=%HOME_DIR%ui\target\rehearsal"
set "STARTED=%HOME_DIR%ui\target\.build-started"
set "JAVA_EXE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"

"%JAVA_EXE%" -version >nul 2>&1
if errorlevel 1 (
    echo coldpleat: needs Java 17 or later; no java was found 1>&2
    exit /b 1
)

powershell -NoProfile -Command "$s = Get-Item -LiteralPath $env:STAMP -ErrorAction SilentlyContinue; if (-not $s) { exit 1 }; $n = Get-ChildItem -LiteralPath ($env:HOME_DIR + 'pom.xml'), ($env:HOME_DIR + 'shared'), ($env:HOME_DIR + 'model'), ($env:HOME_DIR + 'ui'), ($env:HOME_DIR + 'demo-cases') -Recurse -File | Where-Object { $_.FullName -notmatch '\\target\\' -and $_.FullName -notmatch '\\src\\test\\' -and $_.LastWriteTime -gt $s.LastWriteTime } | Select-Object -First 1; if ($n) { exit 1 }"
if errorlevel 1 goto build
goto start

:build
rem The first line is: openjdk version "17.0.15" 2025-04-15
set "VERSION="
for /f tokens^=2^ delims^=^" %%v in ('call "%JAVA_EXE%" -version 2^>^&1 ^| findstr /c:" version "') do if not defined VERSION set "VERSION=%%v"
set "MAJOR=0"
for /f "tokens=1 delims=.-+" %%m in ("%VERSION%") do set "MAJOR=%%m"
if %MAJOR% LSS 17 (
    echo coldpleat: needs Java 17 or later; found version %VERSION% 1>&2
    exit /b 1
)
rem Without a Maven of its own the system gets the one that the wrapper fetches.
set "MAVEN=%HOME_DIR%mvnw.cmd"
where mvn >nul 2>&1
if not errorlevel 1 set "MAVEN=mvn"
echo coldpleat: building the program; this takes about half a minute, the first time some minutes to fetch libraries 1>&2
if not exist "%HOME_DIR%ui\target" mkdir "%HOME_DIR%ui\target"
rem The time of the stamp is that before the build: what is changed meanwhile is built the next time.
type nul > "%STARTED%"
rem Jars of an earlier build could linger beside new ones.
if exist "%APP%" rmdir /s /q "%APP%"
pushd "%HOME_DIR%"
call "%MAVEN%" -B -q -DskipTests -Dquick package -pl ui -am 1>&2
if errorlevel 1 (
    popd
    echo coldpleat: the build failed; see the messages above 1>&2
    exit /b 1
)
popd
move /y "%STARTED%" "%STAMP%" >nul
rem A class archive makes every later start quicker; without it the program runs all the same.
"%JAVA_EXE%" -XX:ArchiveClassesAtExit="%ARCHIVE%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -cp "%APP%\*" org.coldpleat.ui.Rehearsal "%HOME_DIR%demo-cases\ridge-hut-generator\case.yaml" "%HOME_DIR%demo-cases\half-the-area\case.yaml" "%REHEARSAL%" >nul 2>&1
if exist "%REHEARSAL%" rmdir /s /q "%REHEARSAL%"

:start
rem Signs such as those of degrees and of micro leave in UTF-8; the console gets its code page back at the end.
set "CODE_PAGE="
for /f "tokens=2 delims=:." %%c in ('chcp') do set "CODE_PAGE=%%c"
chcp 65001 >nul
set SHARED=
if exist "%ARCHIVE%" set SHARED=-XX:SharedArchiveFile="%ARCHIVE%" -Xlog:cds=off -Xlog:cds+dynamic=off
"%JAVA_EXE%" %SHARED% -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn24m -Xshare:auto -XX:-UsePerfData -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 -cp "%APP%\*" org.coldpleat.ui.Main %*
set "CODE=%ERRORLEVEL%"
if defined CODE_PAGE chcp %CODE_PAGE% >nul
exit /b %CODE%
