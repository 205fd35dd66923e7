# Sourced by the scripts beside it: finds a JDK and Maven, installs what is missing when it may, and builds.
# Everything said here goes to standard error; standard output belongs to the answer.

root=$(cd "$(dirname "$(readlink -f "${BASH_SOURCE[0]}")")/.." && pwd)
oldest_java=17
. "$root/scripts/start.sh"

say() { printf '%s\n' "$*" >&2; }

# Ends the script: 2 where the user can put it right, 1 where the program is at fault.
give_up() { local code=$1; shift; say "$@"; exit "$code"; }

# A JDK of 17 or newer has a compiler beside its launcher and says its version in a file.
is_new_jdk() {
  [ -x "$1/bin/java" ] && [ -x "$1/bin/javac" ] || return 1
  local version
  if [ -r "$1/release" ]; then
    version=$(sed -n 's/^JAVA_VERSION="\([0-9]*\).*/\1/p' "$1/release")
  else
    version=$("$1/bin/javac" -version 2>&1 | sed -n 's/^javac \([0-9]*\).*/\1/p')
  fi
  [ "${version:-0}" -ge "$oldest_java" ]
}

# Sets JAVA_HOME: the one that is set, else the one on the path, else the first that is installed.
find_jdk() {
  local home
  if [ -n "${JAVA_HOME:-}" ] && is_new_jdk "$JAVA_HOME"; then return 0; fi
  home=$(command -v javac || true)
  if [ -n "$home" ]; then
    home=$(dirname "$(dirname "$(readlink -f "$home")")")
    if is_new_jdk "$home"; then export JAVA_HOME=$home; return 0; fi
  fi
  for home in /usr/lib/jvm/* /opt/java/* /opt/homebrew/opt/openjdk*/libexec/openjdk.jdk/Contents/Home \
      /usr/local/opt/openjdk*/libexec/openjdk.jdk/Contents/Home /Library/Java/JavaVirtualMachines/*/Contents/Home; do
    if is_new_jdk "$home"; then export JAVA_HOME=$home; return 0; fi
  done
  return 1
}

# Maven 3.8 or newer on the path.
find_maven() {
  command -v mvn >/dev/null || return 1
  local version
  version=$(mvn -v 2>/dev/null </dev/null | sed -n 's/.*Apache Maven \([0-9]*\)\.\([0-9]*\).*/\1 \2/p' | head -n 1)
  # shellcheck disable=SC2086
  set -- ${version:-0 0}
  [ "$1" -gt 3 ] || { [ "$1" -eq 3 ] && [ "$2" -ge 8 ]; }
}

on_terminal() { [ -t 0 ] && [ -t 2 ]; }

package_manager() {
  local manager
  for manager in apt-get dnf pacman apk brew; do
    if command -v "$manager" >/dev/null; then printf '%s' "$manager"; return; fi
  done
}

# The package of a JDK without a display, by package manager.
jdk_package() {
  case $1 in
    apt-get)
      local version
      for version in 17 21 25; do
        if apt-cache show "openjdk-$version-jdk-headless" >/dev/null 2>&1; then
          printf 'openjdk-%s-jdk-headless' "$version"
          return
        fi
      done
      printf 'default-jdk-headless' ;; # what a machine that knows no package yet is told
    dnf) printf 'java-21-openjdk-devel' ;;
    pacman) printf 'jdk21-openjdk' ;;
    apk) printf 'openjdk17-jdk' ;;
    brew) printf 'openjdk' ;;
  esac
}

# Runs the package manager, as root or through sudo. $1 is empty or "sudo".
install_with() {
  local sudo=$1 manager=$2; shift 2
  case $manager in
    apt-get) $sudo env DEBIAN_FRONTEND=noninteractive apt-get install -y -q --no-install-recommends "$@" ;;
    dnf) $sudo dnf install -y "$@" ;;
    pacman) $sudo pacman -S --noconfirm --needed "$@" ;;
    apk) $sudo apk add "$@" ;;
    brew) brew install "$@" ;;
  esac
}

# Says what is missing and how to get it, then gets it if it may.
install_missing() {
  local manager sudo='' wanted=() log answer
  manager=$(package_manager)
  local missing="$1"
  if [ -z "$manager" ]; then
    give_up 2 "hurdline needs $missing: install them and run this again."
  fi
  if [ "$(id -u)" -ne 0 ] && [ "$manager" != brew ]; then
    if command -v sudo >/dev/null && { sudo -n true 2>/dev/null || on_terminal; }; then sudo=sudo; else
      [ "$needs_jdk" = no ] || wanted+=("$(jdk_package "$manager")")
      [ "$needs_maven" = no ] || wanted+=(maven)
      give_up 2 "hurdline needs $missing: have an administrator run \"$manager install ${wanted[*]}\", then run this again."
    fi
  fi
  mkdir -p "$root/target" 2>/dev/null || give_up 2 "hurdline cannot write to $root/target: make the folder yours and run this again."
  log=$root/target/install.log
  say "hurdline needs $missing and installs them with ${sudo:+$sudo }$manager."
  if on_terminal; then
    printf 'Go on? [Y/n] ' >&2
    read -r answer
    case $answer in [nN]*) give_up 2 "Nothing was installed." ;; esac
  fi
  : >"$log"
  # A bare machine knows no package yet; a failed refresh is no reason to stop if the lists are there.
  if [ "$manager" = apt-get ]; then $sudo apt-get update -q >>"$log" 2>&1 </dev/null || true; fi
  [ "$needs_jdk" = no ] || wanted+=("$(jdk_package "$manager")")
  [ "$needs_maven" = no ] || wanted+=(maven)
  if ! install_with "$sudo" "$manager" "${wanted[@]}" >>"$log" 2>&1 </dev/null; then
    tail -n 5 "$log" >&2
    give_up 2 "Installing ${wanted[*]} failed; the whole log is $log."
  fi
}

# A JDK and Maven, whatever it takes.
have_build_tools() {
  needs_jdk=no needs_maven=no
  find_jdk || needs_jdk=yes
  find_maven || needs_maven=yes
  case $needs_jdk,$needs_maven in
    no,no) return ;;
    yes,yes) install_missing "a JDK ($oldest_java or newer) and Maven (3.8 or newer)" ;;
    yes,no) install_missing "a JDK ($oldest_java or newer)" ;;
    no,yes) install_missing "Maven (3.8 or newer)" ;;
  esac
  find_jdk || give_up 2 "No JDK of version $oldest_java or newer was found even after the installation: set JAVA_HOME to one."
  find_maven || give_up 2 "No Maven of version 3.8 or newer was found even after the installation: put one on the path."
}

# A browser and its driver, in which the tests try the pages; without them those tests are skipped.
have_browser() {
  local manager sudo='' packages log
  if has_browser; then return; fi
  manager=$(package_manager)
  case $manager in
    apt-get) packages='chromium chromium-driver' ;;
    dnf) packages='chromium chromedriver' ;;
    pacman) packages='chromium' ;;
    apk) packages='chromium chromium-chromedriver' ;;
    *) say "No browser is installed here: put chromium and chromedriver on the path."; return ;;
  esac
  if [ "$(id -u)" -ne 0 ]; then sudo='sudo -n'; fi
  mkdir -p "$root/target"
  log=$root/target/install.log
  say "The tests of the pages need $packages and install them with ${sudo:+$sudo }$manager."
  if [ "$manager" = apt-get ]; then $sudo apt-get update -q >>"$log" 2>&1 </dev/null || true; fi
  # shellcheck disable=SC2086
  if ! install_with "$sudo" "$manager" $packages >>"$log" 2>&1 </dev/null; then
    tail -n 5 "$log" >&2
    say "Installing $packages failed; the whole log is $log."
  fi
}

has_browser() {
  command -v chromedriver >/dev/null && { command -v chromium || command -v chromium-browser; } >/dev/null
}

# Compiling is over before the thorough compiler of Java has paid for itself: it takes two fifths of the processor time without.
run_maven() {
  MAVEN_OPTS="-XX:TieredStopAtLevel=1 -XX:+UseSerialGC ${MAVEN_OPTS:-}" mvn -B -ntp -Dstyle.color=never "$@"
}

# Runs the tests, then adds up what they reported. Fails if a test failed, the build did, or nothing ran.
run_tests() {
  cd "$root" || exit 1
  rm -rf ./*/target/{surefire-reports,classes,test-classes} ./*/*/target/{surefire-reports,classes,test-classes} # nothing left over may count
  run_maven --fail-at-end "$@" test </dev/null
  local built=$? counts
  counts=$(sed -n '/<testsuite /,/>/p' ./*/target/surefire-reports/TEST-*.xml ./*/*/target/surefire-reports/TEST-*.xml 2>/dev/null | tr '\n' ' ' | awk '
    function of(name) { return match($0, " " name "=\"[0-9]+\"") ? substr($0, RSTART + length(name) + 3, RLENGTH - length(name) - 4) : 0 }
    BEGIN { RS = "<testsuite " } NR > 1 { sub(/>.*/, ""); $0 = " " $0
      all += of("tests"); bad += of("failures") + of("errors"); skipped += of("skipped") }
    END { print all - bad - skipped, bad + 0, skipped + 0 }')
  echo
  # shellcheck disable=SC2086
  set -- $counts
  [ "$3" -eq 0 ] || echo "$3 skipped"
  has_browser || echo "NOT TRIED: the pages in a browser. Install chromium and chromedriver (chromium-driver on Debian) for that."
  [ "$built" -eq 0 ] || echo "The build failed: tests of modules that come after the failed one did not run."
  echo "$1 passed, $2 failed"
  [ "$built" -eq 0 ] && [ "$2" -eq 0 ] && [ "$1" -gt 0 ]
}
