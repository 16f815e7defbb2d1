@echo off
rem Starts Styloid: without words the window, with a word the command of that name.
rem JAVA_HOME names the Java to use; without it the one on the path is taken.
setlocal
set "home=%~dp0.."
set "java=java"
set "native="
if not defined JAVA_HOME goto run
set "java=%JAVA_HOME%\bin\java"
rem Java 24 and later warn about native code that is not expressly allowed.
findstr /r /c:"^JAVA_VERSION=.2[4-9]" /c:"^JAVA_VERSION=.[3-9][0-9]" "%JAVA_HOME%\release" >nul 2>&1
if not errorlevel 1 set "native=--enable-native-access=javafx.graphics,ALL-UNNAMED --sun-misc-unsafe-memory-access=allow"
:run
"%java%" %native% @"%home%\conf\java.args" -p "%home%\lib\fx" -cp "%home%\lib\*" styloid.launcher.Main %*
exit /b %errorlevel%
