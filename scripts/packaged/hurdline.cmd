@echo off
rem Runs hurdline with the Java of this machine, 17 or newer: that of JAVA_HOME, else that on the path.
rem Without any word, as on a double click, it opens the page of hurdline-plants, a folder of the user.
rem Written with care but NOT TRIED on Windows.
setlocal
set "jar=%~dp0hurdline.jar"
set "java=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
set "flags=-Xms64m -Xmx1g -XX:+UseSerialGC -Xshare:auto -XX:-UsePerfData -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8"
if not "%java%"=="java.exe" goto found
where /q java.exe
if not errorlevel 1 goto found
echo hurdline needs a JDK, version 17 or newer: install one, or set JAVA_HOME to its folder. 1>&2
if "%~1"=="" pause
exit /b 2

:found
if "%~1"=="" goto page
"%java%" -XX:CompileThresholdScaling=10 %flags% %HURDLINE_JVM% -jar "%jar%" %*
exit /b %ERRORLEVEL%

:page
"%java%" -XX:TieredStopAtLevel=1 %flags% %HURDLINE_JVM% -jar "%jar%" open "%USERPROFILE%\hurdline-plants"
set code=%ERRORLEVEL%
if not %code%==0 pause
exit /b %code%
