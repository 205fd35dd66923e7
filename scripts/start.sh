# Sourced by the launchers, that of the sources and that of a package: how Java is told to run hurdline. For any POSIX shell.
# A caller sets java (the program that runs), jar, and archive (where this Java keeps the jar's classes).

# Chart text and file names hold more than ASCII; a bare machine has no locale set.
speak_utf8() {
  case ${LC_ALL:-${LC_CTYPE:-${LANG:-}}} in
    *[uU][tT][fF]8* | *[uU][tT][fF]-8*) ;;
    *) export LC_ALL=C.UTF-8 ;;
  esac
}

# The archive holds this jar's classes ready to be mapped into memory, so that a start need not read and check them.
# Java itself sees whether jar, archive and Java fit, and does without where they do not.
# Makes it once for a jar and a Java, from the classes that a run has need of. Where that fails an empty file stands
# for it, so that not every start tries again.
make_archive() {
  local place work
  place=$(dirname "$archive")
  [ -w "$place" ] || return 0
  exec 8>"$place/quick-start.lock"
  if command -v flock >/dev/null && ! flock -n 8; then return 0; fi # another call is at it; this one starts without
  work=$(mktemp -d "$place/quick-start.XXXXXX") || return 0
  trap 'rm -rf "$work"; exit 130' HUP INT TERM
  (
    cd "$work" || exit 1
    with="-Xmx1g -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Djava.awt.headless=true"
    # shellcheck disable=SC2086
    {
      "$java" $with -jar "$jar" new plant --template shared || exit 1
      "$java" -Xshare:off -XX:DumpLoadedClassList=classes.list $with -jar "$jar" run plant/*.yaml --replications 1 --out run || exit 1
      "$java" -Xshare:dump -XX:SharedClassListFile=classes.list -XX:SharedArchiveFile=made.jsa $with -jar "$jar" || exit 1
      "$java" -XX:SharedArchiveFile=made.jsa $with -jar "$jar" --version || exit 1
    }
  ) >"$work/log" 2>&1 </dev/null || { rm -f "$work/made.jsa"; : >"$work/made.jsa"; }
  touch "$work/made.jsa" && mv -f "$work/made.jsa" "$archive"
  rm -rf "$work"
  trap - HUP INT TERM
  exec 8>&-
}

few_replications=60

# A short call is over before the thorough compiler of Java has paid for itself; figures: sim-core/src/jmh/BENCHMARKS.md.
# A flag that is not named here may ask for many replications, so a call with it counts as long.
is_short() {
  case ${1:-} in
    run) ;;
    check | new | open | -* | '') return 0 ;;
    *) return 1 ;;
  esac
  local word before='' replications=40 # as many as a run simulates when it is not told
  for word in "$@"; do
    case $before in --replications) replications=$word ;; esac
    case $word in
      --replications=*) replications=${word#*=} ;;
      --replications | --option | --option=* | --set | --set=* | --seed | --seed=* | --threads | --threads=* | --out | --out=*) ;;
      --trace | --trace=* | --replication | --replication=* | --units | --units=* | --locale | --locale=* | --json | --quiet | --help) ;;
      --*) return 1 ;;
    esac
    before=$word
  done
  case $replications in '' | *[!0-9]* | ????*) return 1 ;; esac
  [ "$replications" -le "$few_replications" ]
}

# Runs hurdline in place of the shell. HURDLINE_JVM holds further options for Java.
run_hurdline() {
  local compiler=-XX:CompileThresholdScaling=10 # the thorough compiler takes up only what is called often
  if is_short "$@"; then compiler=-XX:TieredStopAtLevel=1; fi
  # shellcheck disable=SC2086
  set -- $compiler -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8 \
    ${HURDLINE_JVM:-} -jar "$jar" "$@"
  if [ -s "$archive" ]; then
    set -- -XX:SharedArchiveFile="$archive" -Xlog:disable -Xlog:all=error:stderr -Xlog:cds*=off:stderr "$@"
  fi
  exec "$java" -Xms64m -Xmx1g -XX:+UseSerialGC -Xshare:auto -XX:-UsePerfData "$@"
}
