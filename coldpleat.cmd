@echo off
rem Starts Coldpleat from a source checkout. Builds it first if it was never built or if a source is newer than the build.
setlocal
set "HOME_DIR=%~dp0"
set "APP=%HOME_DIR%ui\target\app"
set "STAMP=%APP%\.built"
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
where mvn >nul 2>&1
if errorlevel 1 (
    echo coldpleat: has to be built first and needs Maven for it; no mvn was found 1>&2
    exit /b 1
)
echo coldpleat: building the program; this takes about half a minute, the first time some minutes to fetch libraries 1>&2
if exist "%APP%" rmdir /s /q "%APP%"
pushd "%HOME_DIR%"
call mvn -B -q -DskipTests -Dquick package -pl ui -am 1>&2
if errorlevel 1 (
    popd
    echo coldpleat: the build failed; see the messages above 1>&2
    exit /b 1
)
popd
type nul > "%STAMP%"

:start
"%JAVA_EXE%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -cp "%APP%\*" org.coldpleat.ui.Main %*
exit /b %ERRORLEVEL%
