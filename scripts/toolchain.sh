# shellcheck shell=bash
# What every script of Fettle needs: a JDK and Maven, or one line that says what is missing.
# Sourced, not run; sets JAVA to the java to use.

say() { printf 'fettle: %s\n' "$*" >&2; }

refuse() {
  say "$*"
  exit 1
}

# The major version of a java, or 0 if it does not run. A JDK states it in a file; starting one to ask takes much longer.
java_major() {
  local line major release
  release=$(command -v "$1") && release=$(readlink -f -- "$release" 2> /dev/null) && release=${release%/bin/*}/release
  line=$(grep -s -m 1 '^JAVA_VERSION="' "$release" || "$1" -version 2>&1 | grep -m 1 'version "') || { echo 0; return; }
  major=${line#*\"}
  major=${major%%[!0-9]*}
  echo "${major:-0}"
}

require_java() {
  JAVA=${JAVA_HOME:+$JAVA_HOME/bin/}java
  command -v "$JAVA" > /dev/null 2>&1 || refuse "no Java found. Install a JDK 17 or later (Debian: apt install openjdk-17-jdk) or set JAVA_HOME."
  local major
  major=$(java_major "$JAVA")
  [ "$major" -ge 17 ] || refuse "Java $major found at $(command -v "$JAVA"); Fettle needs 17 or later. Install a JDK 17 or set JAVA_HOME."
}

require_build_tools() {
  require_java
  command -v "${JAVA}c" > /dev/null 2>&1 || refuse "Java is here but its compiler (javac) is not. Install a JDK 17 or later, not only a runtime (Debian: apt install openjdk-17-jdk)."
  command -v mvn > /dev/null 2>&1 || refuse "Maven (mvn) not found; Fettle is built with it. Install Maven 3.8 or later (Debian: apt install maven)."
}
