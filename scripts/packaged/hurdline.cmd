@echo off
rem Runs hurdline with the Java of this machine, 17 or newer: that of JAVA_HOME, else that on the path.
rem Without any word, as on a double click, it opens the page of hurdline-plants, a folder of the user.
rem Written with care but NOT TRIED on Windows.
setlocal
set "jar=%~dp0hurdline.jar"
set "java=java.exe"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if "%java%"=="java.exe" where /q java.exe || (
  echo hurdline needs a JDK, version 17 or newer: install one, or set JAVA_HOME to its folder. 1>&2
  if "%~1"=="" pause
  exit /b 2
)
set "flags=-Xms64m -Xmx1g -XX:+UseSerialGC -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8"
if "%~1"=="" (
  "%java%" %flags% %HURDLINE_JVM% -jar "%jar%" open "%USERPROFILE%\hurdline-plants" || pause
) else (
  "%java%" %flags% %HURDLINE_JVM% -jar "%jar%" %*
)
exit /b %ERRORLEVEL%
